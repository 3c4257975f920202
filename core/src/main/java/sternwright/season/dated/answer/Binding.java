package sternwright.season.dated.answer;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import sternwright.season.dated.WorkingTime;

/**
 * A resource that is full for some weeks on end.
 *
 * @param kind what it is
 * @param name the yard's name for it
 * @param firstWeek first full week of the season, counted from 0
 * @param lastWeek last full week
 * @param from first day of those weeks
 * @param to last day
 */
public record Binding(Load.Kind kind, String name, int firstWeek, int lastWeek, LocalDate from, LocalDate to) {
    static List<Binding> of(List<Load> loads, WorkingTime time) {
        List<Binding> bindings = new ArrayList<>();
        for (Load load : loads) {
            int begun = -1;
            for (int w = 0; w <= load.weeks().size(); w++) {
                boolean full = w < load.weeks().size() && load.full(w);
                if (full && begun < 0) {
                    begun = w;
                } else if (!full && begun >= 0) {
                    bindings.add(new Binding(
                            load.kind(), load.name(), begun, w - 1, time.weekFrom(begun), time.weekTo(w - 1)));
                    begun = -1;
                }
            }
        }
        return bindings;
    }
}

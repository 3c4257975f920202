package sternwright.season.dated;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import sternwright.boat.Berth;
import sternwright.boat.Boat;
import sternwright.visit.planned.PlannedVisit;

/**
 * A boat with the visits that were planned for it.
 *
 * @param boat the boat
 * @param berth where it lies
 * @param visits in order of their first day
 */
public record SeasonBoat(Boat boat, Berth berth, List<PlannedVisit> visits) {
    /** Sorts the visits. */
    public SeasonBoat {
        visits = visits.stream()
                .sorted(Comparator.comparing(PlannedVisit::from).thenComparing(PlannedVisit::to))
                .toList();
    }

    /** The same without visits that begin in the last week of a season and may end after it: there may be no room for them. */
    SeasonBoat until(LocalDate last) {
        return new SeasonBoat(
                boat,
                berth,
                visits.stream()
                        .filter(v ->
                                !v.to().isAfter(last) || !v.from().plusWeeks(1).isAfter(last))
                        .toList());
    }
}

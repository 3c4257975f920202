package sternwright.season;

import java.util.List;

/**
 * One hoist and how many boats it lifts or launches in each part of a working day.
 *
 * @param name the yard's name for it
 * @param slotsByQuarter lifts or launches in each quarter of a day, one entry per quarter of the day
 * @param downDays working days on which it does not work
 */
public record Hoist(String name, List<Integer> slotsByQuarter, List<Integer> downDays) {
    /** Copies the lists. */
    public Hoist {
        slotsByQuarter = List.copyOf(slotsByQuarter);
        downDays = List.copyOf(downDays);
    }
}

package sternwright.season;

import java.util.List;

/**
 * Working days on which something may begin, such as those with water enough for one draught.
 *
 * @param name for people: "spring tides"
 * @param days the working days, ascending
 */
public record Days(String name, List<Integer> days) {
    /** Copies the list. */
    public Days {
        days = List.copyOf(days);
    }
}

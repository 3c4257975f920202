package sternwright.season;

import java.util.List;

/**
 * Boats that the same hoists can take, by weight and beam.
 *
 * @param name for people: "over 12 t"
 * @param hoists indices of the hoists that can take them
 */
public record LiftClass(String name, List<Integer> hoists) {
    /** Copies the list. */
    public LiftClass {
        hoists = List.copyOf(hoists);
    }
}

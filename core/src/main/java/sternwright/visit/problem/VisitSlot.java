package sternwright.visit.problem;

/**
 * A month and a place in which a visit may be held.
 *
 * @param month month of the horizon, 0 is the first
 * @param place afloat or ashore
 */
public record VisitSlot(int month, Place place) {
    public VisitSlot {
        if (month < 0) {
            throw new IllegalArgumentException("visit month " + month + ": expected 0 or more");
        }
    }
}

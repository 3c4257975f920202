package sternwright.season;

/**
 * A date the yard has given an owner.
 *
 * @param operation index of the operation that was promised
 * @param startQ quarter it was promised to start
 * @param movedCost what it costs that it lands on another day, at least 0, or {@link #USUAL} for the yard's own price; at 0 it is moved freely,
 *     however far
 */
public record Promise(int operation, int startQ, int movedCost) {
    /** Stands for the yard's own price of a moved promise. */
    public static final int USUAL = -1;

    /** Whether it costs nothing to move it, however far. */
    public boolean free() {
        return movedCost == 0;
    }

    /** A promise at the yard's own price. */
    public Promise(int operation, int startQ) {
        this(operation, startQ, USUAL);
    }
}

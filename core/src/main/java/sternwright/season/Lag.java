package sternwright.season;

/**
 * Two operations whose starts must lie between two distances.
 *
 * @param before index of the earlier operation
 * @param after index of the later operation
 * @param minQ least distance from start to start, in quarters
 * @param maxQ greatest distance from start to start, in quarters; {@link #FREE} if nothing limits it
 */
public record Lag(int before, int after, int minQ, int maxQ) {
    /** Stands for "no greatest distance". */
    public static final int FREE = 1 << 20;

    /** {@code after} starts at or after the end of {@code before}, which takes {@code lengthQ}. */
    public static Lag endToStart(int before, int lengthQ, int after) {
        return new Lag(before, after, lengthQ, FREE);
    }
}

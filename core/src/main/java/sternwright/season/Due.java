package sternwright.season;

/**
 * When an operation should be finished, and what it costs when it is not.
 *
 * @param kind what stands behind the date
 * @param byQ quarter by whose beginning the operation should have ended
 * @param latePerQ cost for each quarter that the end lies after {@code byQ}, at least 0
 * @param earlyPerQ cost for each quarter that the end lies before {@code byQ}, at least 0
 */
public record Due(Kind kind, int byQ, int latePerQ, int earlyPerQ) {
    /** No date at all. */
    public static final Due NONE = new Due(Kind.WANTED, 0, 0, 0);

    /** What stands behind a date. */
    public enum Kind {
        /** The berth's first frost: later is unsafe for the machinery. */
        FROST,
        /** The owner's wish. */
        WANTED
    }

    /** Refuses negative prices. */
    public Due {
        if (latePerQ < 0 || earlyPerQ < 0) {
            throw new IllegalArgumentException(
                    "a due date needs prices of at least 0, got " + latePerQ + ", " + earlyPerQ);
        }
    }

    /** Cost of ending at quarter {@code endQ}. */
    public int cost(int endQ) {
        return endQ > byQ ? (endQ - byQ) * latePerQ : (byQ - endQ) * earlyPerQ;
    }
}

package sternwright.visit.problem;

/**
 * How good the plan is known to be.
 *
 * @param boundCents no plan can cost less than this, in the smallest unit of the currency
 * @param status what the search came to
 * @param millis time used, by the clock that was handed in
 * @param nodes branches looked at
 */
public record Proof(long boundCents, Status status, long millis, long nodes) {
    /** What the search came to. */
    public enum Status {
        /** Nothing is cheaper. */
        OPTIMAL,
        /** The gap that was asked for is reached. */
        WITHIN_GAP,
        /** Stopped at the limit of time or branches: the gap says how far the bound is. */
        STOPPED
    }
}

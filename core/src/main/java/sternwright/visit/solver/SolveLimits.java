package sternwright.visit.solver;

import java.util.function.LongSupplier;

/**
 * How long to search. Without a clock a run can be repeated to the last figure.
 *
 * @param nanoClock nanoseconds from any origin; the core has no clock of its own
 * @param nanos most time to use, in nanoseconds
 * @param nodes most branches to look at; 0 for the first plan and its first bound only
 * @param gap gap at which to stop, as a share of the cost; 0 for optimal
 */
public record SolveLimits(LongSupplier nanoClock, long nanos, long nodes, double gap) {
    public SolveLimits {
        if (nanos < 0 || nodes < 0 || !(gap >= 0)) {
            throw new IllegalArgumentException("limits of time, branches and gap: expected 0 or more");
        }
    }

    /** A limit by branches alone, which needs no clock. */
    public static SolveLimits ofNodes(long nodes) {
        return new SolveLimits(() -> 0, Long.MAX_VALUE, nodes, 0);
    }

    /** A limit by time. */
    public static SolveLimits ofSeconds(LongSupplier nanoClock, double seconds) {
        return new SolveLimits(nanoClock, Math.round(seconds * 1e9), Long.MAX_VALUE, 0);
    }

    /** The same limits, stopping at a gap. */
    public SolveLimits withGap(double share) {
        return new SolveLimits(nanoClock, nanos, nodes, share);
    }
}

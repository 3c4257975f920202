package sternwright.season.planner;

import sternwright.season.Bound;

/** Sees planning at work and may stop it; the best plan so far is kept. */
@FunctionalInterface
public interface Progress {
    /** Looks on silently. */
    Progress SILENT = (spent, cost, bound) -> true;

    /**
     * Called about twice a second.
     *
     * @param spent spent part of the budget, 0 to 1
     * @param cost cost of the best plan so far
     * @param bound the bound so far
     * @return false to stop now and keep the best plan
     */
    boolean goOn(double spent, long cost, Bound bound);
}

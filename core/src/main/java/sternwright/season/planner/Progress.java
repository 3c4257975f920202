package sternwright.season.planner;

import java.util.function.Supplier;
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

    /**
     * Called when there is a better plan, the first one included.
     *
     * @param answer the plan, proved by the judge when asked for, in whatever thread asks; it stays what it is while the search goes on
     */
    default void better(Supplier<SeasonAnswer> answer) {}
}

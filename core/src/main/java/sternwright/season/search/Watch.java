package sternwright.season.search;

/** Sees the search at work and may stop it; what it has found by then is kept. */
@FunctionalInterface
public interface Watch {
    /** Never stops. */
    Watch SILENT = (spent, points) -> true;

    /**
     * Called about every half second.
     *
     * @param spent spent part of the budget, 0 to 1
     * @param points cost of the best plan so far
     * @return false to stop now
     */
    boolean goOn(double spent, long points);

    /**
     * Called before {@link #goOn} when there is a better plan.
     *
     * @param starts starts of the better plan, never changed afterwards
     */
    default void better(int[] starts) {}
}

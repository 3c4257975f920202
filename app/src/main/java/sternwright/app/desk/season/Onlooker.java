package sternwright.app.desk.season;

import java.util.function.Supplier;

/** Sees the work and may stop it; the best so far is kept. */
public interface Onlooker {
    /** Sees nothing, stops nothing. */
    Onlooker NOBODY = new Onlooker() {
        @Override
        public void says(String what) {}

        @Override
        public boolean goOn(double spent, double cost, double bound) {
            return true;
        }
    };

    /**
     * A remark on the work under way.
     *
     * @param what one line
     */
    void says(String what);

    /**
     * The best plan so far.
     *
     * @param spent spent part of the time, 0 to 1
     * @param cost its cost in the yard's currency
     * @param bound no plan can cost less
     * @return false to stop and keep it
     */
    boolean goOn(double spent, double cost, double bound);

    /**
     * There is a better plan than before, or the first one.
     *
     * @param plan the plan, passed by both judges when asked for, in whatever thread asks; it stays what it is while the search goes on
     */
    default void better(Supplier<PlannedSeason> plan) {}
}

package sternwright.season.planner;

import java.util.function.LongSupplier;

/** Gives the bound a share of the time that has gone by. */
final class TimedPace implements SeasonPlanner.BoundPace {
    private final double share;
    private final LongSupplier clock;
    private final long began;
    private long inBound;
    private long since = -1;

    TimedPace(double share, LongSupplier clock) {
        this.share = share;
        this.clock = clock;
        began = clock.getAsLong();
    }

    @Override
    public boolean more(long made, double spent) {
        long now = clock.getAsLong();
        if (since >= 0) {
            inBound += now - since;
        }
        boolean more = inBound < share * (now - began);
        since = more ? now : -1;
        return more;
    }
}

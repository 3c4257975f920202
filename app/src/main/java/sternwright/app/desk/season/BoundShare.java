package sternwright.app.desk.season;

import java.util.function.LongSupplier;
import sternwright.season.planner.SeasonPlanner;

/** Gives the bound a share of the time. */
final class BoundShare implements SeasonPlanner.BoundPace {
    private static final double SHARE = 0.10;

    private final LongSupplier clock;
    private final long began;
    private long used;
    private long stepBegan = -1;

    BoundShare(LongSupplier clock) {
        this.clock = clock;
        began = clock.getAsLong();
    }

    @Override
    public boolean more(long made, double spent) {
        long now = clock.getAsLong();
        if (stepBegan >= 0) {
            used += now - stepBegan;
        }
        boolean more = used < SHARE * (now - began);
        stepBegan = more ? now : -1;
        return more;
    }
}

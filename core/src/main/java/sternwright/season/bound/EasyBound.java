package sternwright.season.bound;

import sternwright.season.Bound;
import sternwright.season.arrays.SeasonArrays;

/** The bound at once: every operation at the cheapest start of its own window, as if the yard had no limits. */
public final class EasyBound {
    private EasyBound() {}

    /** The bound of season {@code a}. */
    public static Bound of(SeasonArrays a) {
        long sum = 0;
        for (int i = 0; i < a.n; i++) {
            sum += least(a, i);
        }
        return new Bound(sum, "every operation at its own cheapest date, as if hoists, places and people were endless");
    }

    /** Least cost of operation {@code i} in its own window; 0 if it has no start at all. */
    static long least(SeasonArrays a, int i) {
        int least = Integer.MAX_VALUE;
        for (int q = a.earliest[i]; q <= a.latest[i]; q++) {
            least = a.dayAllowed(i, q) ? Math.min(least, a.startCost(i, q)) : least;
        }
        return least == Integer.MAX_VALUE ? 0 : least;
    }
}

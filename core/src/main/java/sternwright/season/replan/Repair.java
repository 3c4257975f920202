package sternwright.season.replan;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import sternwright.season.arrays.MarginalCost;
import sternwright.season.arrays.SeasonArrays;
import sternwright.season.arrays.Timetable;
import sternwright.season.search.FirstPlan;

/** Keeps every old start that still fits, and puts what does not fit where it costs least. */
final class Repair {
    private static final int GUIDE_CHARGE_PERCENT = 20;

    private final SeasonArrays a;
    private final Timetable t;
    private final MarginalCost marginal;
    private final int[] one = new int[1];

    Repair(SeasonArrays a) {
        this.a = a;
        t = new Timetable(a, GUIDE_CHARGE_PERCENT);
        marginal = new MarginalCost(t);
    }

    /** The starts, after {@link #without} was empty. */
    int[] starts() {
        return t.start.clone();
    }

    /** Makes the plan; returns the operations that find no room even when all that has not begun may move. */
    List<Integer> without(List<Integer> old, long seed) {
        placeBegun(old);
        IntStream.range(0, old.size())
                .filter(i -> t.start[i] == Timetable.OUT)
                .boxed()
                .sorted(Comparator.comparingInt(old::get))
                .forEach(i -> keep(i, old.get(i)));
        if (FirstPlan.fill(t, seed).isEmpty()) {
            return List.of();
        }
        for (int i = 0; i < a.n; i++) {
            if (t.start[i] != Timetable.OUT && a.earliest[i] < a.latest[i]) {
                t.remove(i);
            }
        }
        return FirstPlan.fill(t, seed);
    }

    private void placeBegun(List<Integer> old) {
        for (int i = 0; i < old.size(); i++) {
            if (a.earliest[i] == a.latest[i] && a.earliest[i] == old.get(i)) {
                t.add(i, old.get(i));
            }
        }
    }

    private void keep(int i, int q) {
        if (q < a.earliest[i] || q > a.latest[i] || !lagsKept(i, q)) {
            return;
        }
        Arrays.fill(one, 0);
        marginal.fill(i, q, q, one);
        if (one[0] < MarginalCost.NEVER) {
            t.add(i, q);
        }
    }

    private boolean lagsKept(int i, int q) {
        int[] lags = a.lags[i];
        for (int e = 0; e < lags.length; e += 3) {
            int s = t.start[lags[e]];
            if (s != Timetable.OUT && (s < q + lags[e + 1] || s > q + lags[e + 2])) {
                return false;
            }
        }
        return true;
    }
}

package sternwright.visit.solver;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** Cheapest path of one work, given a price for doing it in each phase and month. Holds scratch space; not for two threads. */
final class ShortestPath {
    private static final double NONE = WorkPaths.NONE;

    /** Cost to reach a node, its own price included, by phase and month + 1. */
    final double[][] reach;

    private final int[][] from;
    private final double[][] rest;
    private final int horizon;
    /** Months done, in order, after {@link #solve}. */
    final int[] months;

    /** Phases done, in the same order. */
    final int[] phases;

    /** How many doings. */
    int length;

    ShortestPath(int horizon, int mostPhases) {
        this.horizon = horizon;
        reach = new double[mostPhases][horizon + 1];
        from = new int[mostPhases][horizon + 1];
        rest = new double[mostPhases][horizon + 1];
        months = new int[horizon + 1];
        phases = new int[horizon + 1];
    }

    /** Cost of the cheapest path, infinite if there is none. */
    double solve(WorkPaths w, int[] last, boolean[] mayEnd, double[][] price) {
        return solve(w, last, mayEnd, price, null);
    }

    /** The same with a price on the first doing, by month; null for none. */
    double solve(WorkPaths w, int[] last, boolean[] mayEnd, double[][] price, double @Nullable [] firstPrice) {
        int before = w.firstPhase == 0 ? w.phases - 1 : w.firstPhase - 1;
        for (int k = 0; k < w.phases; k++) {
            Arrays.fill(reach[k], NONE);
        }
        reach[before][0] = 0;
        double best = NONE;
        int bestPhase = -1;
        int bestMonth = -1;
        for (int f = 0; f <= horizon; f++) {
            for (int k = 0; k < w.phases; k++) {
                double d = reach[k][f] + (f > 0 ? price[k][f - 1] : 0);
                reach[k][f] = d;
                if (!(d < NONE)) {
                    continue;
                }
                int n = w.next(k);
                if (mayEnd[f] && d + w.end[n][f] < best) {
                    best = d + w.end[n][f];
                    bestPhase = k;
                    bestMonth = f;
                }
                if (f == 0 && firstPrice != null) {
                    relaxFirst(d, w.targets[n][0], w.costs[n][0], last[0], n, firstPrice);
                } else {
                    relax(d, f, w.targets[n][f], w.costs[n][f], last[f], n);
                }
            }
        }
        if (best < NONE) {
            trace(w, bestPhase, bestMonth);
        }
        return best;
    }

    private void relax(double d, int f, int[] targets, double[] costs, int last, int phase) {
        double[] to = reach[phase];
        int[] by = from[phase];
        for (int i = 0; i < targets.length; i++) {
            int t = targets[i];
            if (t > last) {
                return;
            }
            double c = d + costs[i];
            if (c < to[t + 1]) {
                to[t + 1] = c;
                by[t + 1] = f;
            }
        }
    }

    private void relaxFirst(double d, int[] targets, double[] costs, int last, int phase, double[] firstPrice) {
        for (int i = 0; i < targets.length && targets[i] <= last; i++) {
            int t = targets[i];
            reach[phase][t + 1] = d + costs[i] + firstPrice[t];
            from[phase][t + 1] = 0;
        }
    }

    private void trace(WorkPaths w, int phase, int month) {
        length = 0;
        int k = phase;
        int f = month;
        while (f > 0) {
            months[length] = f - 1;
            phases[length++] = k;
            f = from[k][f];
            k = k == 0 ? w.phases - 1 : k - 1;
        }
        for (int a = 0, b = length - 1; a < b; a++, b--) {
            int m = months[a];
            months[a] = months[b];
            months[b] = m;
            int p = phases[a];
            phases[a] = phases[b];
            phases[b] = p;
        }
    }

    /**
     * After {@link #solve}: strikes out every step through which even the cheapest path costs more than the limit.
     *
     * @return whether any node is left for the month, by month
     */
    boolean[] strike(
            WorkPaths w, int[] last, boolean[] mayEnd, double[][] price, double @Nullable [] firstPrice, double limit) {
        boolean[] used = new boolean[horizon];
        for (int f = horizon; f >= 0; f--) {
            for (int k = 0; k < w.phases; k++) {
                int n = w.next(k);
                double[] row = w.step[n][f];
                double best = mayEnd[f] ? w.end[n][f] : NONE;
                for (int t = w.first[f]; t <= last[f]; t++) {
                    double first = f == 0 && firstPrice != null ? firstPrice[t] : 0;
                    double c = row[t] + first + price[n][t] + rest[n][t + 1];
                    best = Math.min(best, c);
                    if (reach[k][f] + c > limit) {
                        row[t] = NONE;
                    } else {
                        used[t] = true;
                    }
                }
                if (mayEnd[f] && reach[k][f] + w.end[n][f] > limit) {
                    w.end[n][f] = NONE;
                }
                rest[k][f] = best;
            }
        }
        w.compact();
        return used;
    }
}

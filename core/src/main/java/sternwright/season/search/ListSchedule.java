package sternwright.season.search;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;
import sternwright.season.arrays.MarginalCost;
import sternwright.season.arrays.SeasonArrays;
import sternwright.season.arrays.Timetable;

/**
 * The whiteboard's equal: boats in the order of their dates, each operation at the first time that is free (a launch at the free
 * time nearest the owner's date, what leads up to it as late as it can be). Nothing is weighed. Kept as the peer that the search
 * is measured against.
 */
public final class ListSchedule {
    private final Timetable t;
    private final SeasonArrays a;
    private final MarginalCost marginal;
    private final int[] costs;

    private ListSchedule(Timetable t) {
        this.t = t;
        a = t.a;
        marginal = new MarginalCost(t);
        costs = new int[a.quarters + 1];
    }

    /**
     * Places what is not placed yet.
     *
     * @return whether all could be placed
     */
    public static boolean fill(Timetable t) {
        return new ListSchedule(t).run();
    }

    private boolean run() {
        Integer[] halves = IntStream.range(0, a.halfOperations.length).boxed().toArray(Integer[]::new);
        Arrays.sort(halves, Comparator.comparingInt(this::date));
        boolean whole = true;
        for (int h : halves) {
            whole &= placeHalf(h);
        }
        return whole;
    }

    /** Places a half; if something finds no room after its first operation, begins later. */
    private boolean placeHalf(int h) {
        int[] operations = order(a.halfOperations[h]);
        int notBefore = 0;
        for (int tries = 0; tries < a.quarters; tries++) {
            int placed = 0;
            while (placed < operations.length && place(operations[placed], placed == 0 ? notBefore : 0)) {
                placed++;
            }
            if (placed == operations.length) {
                return true;
            }
            if (placed == 0) {
                return false;
            }
            notBefore = t.start[operations[0]] + 1;
            for (int back = 0; back < placed; back++) {
                t.remove(operations[back]);
            }
        }
        return false;
    }

    private int date(int h) {
        return Arrays.stream(a.halfOperations[h])
                .map(i -> a.latePerQ[i] > 0 ? a.due[i] : a.latest[i])
                .min()
                .orElse(0);
    }

    /** Operations with an earliness price first, the others as the yard wrote them. */
    private int[] order(int[] operations) {
        return Arrays.stream(operations)
                .boxed()
                .sorted(Comparator.comparingInt(i -> a.earlyPerQ[i] > 0 ? 0 : 1))
                .mapToInt(Integer::intValue)
                .toArray();
    }

    private boolean place(int i, int notBefore) {
        int low = Math.max(a.earliest[i], notBefore);
        int high = a.latest[i];
        boolean leadsUp = false;
        int[] lags = a.lags[i];
        for (int e = 0; e < lags.length; e += 3) {
            int s = t.start[lags[e]];
            if (s != Timetable.OUT) {
                low = Math.max(low, s - lags[e + 2]);
                high = Math.min(high, s - lags[e + 1]);
                leadsUp |= lags[e + 1] > 0;
            }
        }
        if (low > high) {
            return false;
        }
        int q = choose(i, low, high, leadsUp && a.latePerQ[i] == 0);
        if (q >= 0) {
            t.add(i, q);
        }
        return q >= 0;
    }

    private int choose(int i, int low, int high, boolean late) {
        marginal.fill(i, low, high, costs);
        int wish = late ? high : a.earlyPerQ[i] > 0 ? a.due[i] - a.length[i] : low;
        int best = -1;
        for (int q = low; q <= high; q++) {
            if (costs[q - low] < MarginalCost.NEVER && (best < 0 || Math.abs(q - wish) < Math.abs(best - wish))) {
                best = q;
            }
        }
        return best;
    }
}

package sternwright.season.search;

import sternwright.season.Lag;
import sternwright.season.arrays.SeasonArrays;

/**
 * Cuts the season at the beginning of a week into two sides that may be changed at the same time.
 *
 * <p>An operation belongs to the side it lies in. One that crosses the cut, or that has a neighbour on the other side whose
 * distance is not kept by the cut itself, stays where it is. Nothing else couples the sides: hoists, people and weekly costs are
 * counted by quarter and week, and a boat whose lift and launch lie on both sides holds its place across the cut anyway.
 */
final class Sides {
    /** Quarter at which the season is cut. */
    final int cut;

    /** Operations that may be moved before the cut. */
    final boolean[] before;

    /** Operations that may be moved after it. */
    final boolean[] after;

    Sides(SeasonArrays a, int[] start, int cutQ) {
        cut = cutQ;
        before = new boolean[a.n];
        after = new boolean[a.n];
        for (int i = 0; i < a.n; i++) {
            before[i] = start[i] + a.length[i] <= cut && free(a, start, i);
            after[i] = start[i] >= cut && free(a, start, i);
        }
    }

    private boolean free(SeasonArrays a, int[] start, int i) {
        if (a.earliest[i] == a.latest[i]) {
            return false;
        }
        int[] lags = a.lags[i];
        boolean isBefore = start[i] < cut;
        for (int e = 0; e < lags.length; e += 3) {
            int other = lags[e];
            if (start[other] < cut == isBefore) {
                continue;
            }
            int least = isBefore ? lags[e + 1] : -lags[e + 2];
            int most = isBefore ? lags[e + 2] : -lags[e + 1];
            int length = a.length[isBefore ? i : other];
            if (least > length || most < Lag.FREE) {
                return false;
            }
        }
        return true;
    }

    /** How many operations can be moved on the side that has fewer. */
    int smaller() {
        int first = 0;
        int second = 0;
        for (int i = 0; i < before.length; i++) {
            first += before[i] ? 1 : 0;
            second += after[i] ? 1 : 0;
        }
        return Math.min(first, second);
    }
}

package sternwright.season.bound;

import sternwright.season.arrays.SeasonArrays;

/** How late an operation can start in a plan that is not dearer than one already found. */
final class Reach {
    private Reach() {}

    /** Latest starts whose own lateness alone does not cost more than {@code upper}. */
    static int[] latest(SeasonArrays a, long upper) {
        int[] latest = a.latest.clone();
        for (int i = 0; i < a.n; i++) {
            if (a.latePerQ[i] > 0) {
                long most = a.due[i] - a.length[i] + upper / a.latePerQ[i];
                latest[i] = (int) Math.max(a.earliest[i], Math.min(latest[i], most));
            }
        }
        boolean narrower = true;
        while (narrower) {
            narrower = false;
            for (int i = 0; i < a.n; i++) {
                int[] lags = a.lags[i];
                for (int e = 0; e < lags.length; e += 3) {
                    int most = latest[i] + lags[e + 2];
                    if (most < latest[lags[e]] && most >= a.earliest[lags[e]]) {
                        latest[lags[e]] = most;
                        narrower = true;
                    }
                }
            }
        }
        return latest;
    }
}

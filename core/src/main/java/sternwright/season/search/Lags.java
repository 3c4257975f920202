package sternwright.season.search;

import java.util.Arrays;
import sternwright.season.Lag;
import sternwright.season.arrays.SeasonArrays;
import sternwright.season.arrays.Timetable;

/** The operations that are to be put back together, their windows, and the tree of lags that joins them. */
final class Lags {
    private static final int MOST = 64;
    private static final int UNSEEN = -2;

    final SeasonArrays a;
    final int[] operation = new int[MOST];
    final int[] low = new int[MOST];
    final int[] high = new int[MOST];

    /** Local indices, root first, each after its parent. */
    final int[] order = new int[MOST];

    final int[] parent = new int[MOST];
    final int[] lagMin = new int[MOST];
    final int[] lagMax = new int[MOST];
    int size;

    /** Whether a lag or a stay joins two of them that the tree does not. */
    boolean cyclic;

    private final int[] localOf;
    private int joined;

    Lags(SeasonArrays a) {
        this.a = a;
        localOf = new int[a.n];
        Arrays.fill(localOf, -1);
    }

    void clear() {
        for (int x = 0; x < size; x++) {
            localOf[operation[x]] = -1;
        }
        size = 0;
    }

    boolean add(int i) {
        if (size == MOST) {
            return false;
        }
        localOf[i] = size;
        operation[size++] = i;
        return true;
    }

    int local(int i) {
        return localOf[i];
    }

    /** Windows from the season, the placed neighbours and each other; false if one is empty. */
    boolean windows(Timetable t, int from, int to) {
        for (int x = 0; x < size; x++) {
            int i = operation[x];
            low[x] = Math.max(a.earliest[i], from);
            high[x] = Math.min(a.latest[i], to - a.length[i]);
            clipToPlaced(t, x);
        }
        return tighten();
    }

    private void clipToPlaced(Timetable t, int x) {
        int[] lags = a.lags[operation[x]];
        for (int e = 0; e < lags.length; e += 3) {
            int s = t.start[lags[e]];
            if (s != Timetable.OUT) {
                low[x] = Math.max(low[x], s - lags[e + 2]);
                high[x] = Math.min(high[x], s - lags[e + 1]);
            }
        }
    }

    boolean tighten() {
        boolean narrower = true;
        for (int pass = 0; narrower && pass <= size; pass++) {
            narrower = false;
            for (int x = 0; x < size; x++) {
                if (low[x] > high[x]) {
                    return false;
                }
                narrower |= tightenNeighbours(x);
            }
        }
        return !narrower;
    }

    private boolean tightenNeighbours(int x) {
        boolean narrower = false;
        int[] lags = a.lags[operation[x]];
        for (int e = 0; e < lags.length; e += 3) {
            int y = localOf[lags[e]];
            if (y >= 0) {
                int least = low[x] + lags[e + 1];
                int most = high[x] + lags[e + 2];
                if (least > low[y] || most < high[y]) {
                    low[y] = Math.max(low[y], least);
                    high[y] = Math.min(high[y], most);
                    narrower = true;
                }
            }
        }
        return narrower;
    }

    /** Grows the tree, depth first so that rings close at an ancestor, from the operation with most neighbours (or a lift). */
    void tree() {
        cyclic = false;
        Arrays.fill(parent, 0, size, UNSEEN);
        joined = 0;
        int components = 0;
        int next = root();
        while (joined < size) {
            join(next, joined == 0 ? -1 : order[0], -2 * Lag.FREE, 2 * Lag.FREE);
            components++;
            for (next = 0; next < size && parent[next] != UNSEEN; ) {
                next++;
            }
        }
        cyclic |= edges() + components > size;
    }

    private void join(int x, int by, int min, int max) {
        parent[x] = by;
        lagMin[x] = min;
        lagMax[x] = max;
        order[joined++] = x;
        int[] lags = a.lags[operation[x]];
        for (int e = 0; e < lags.length; e += 3) {
            int y = localOf[lags[e]];
            if (y >= 0 && parent[y] == UNSEEN) {
                join(y, x, lags[e + 1], lags[e + 2]);
            }
        }
    }

    private int edges() {
        int twice = 0;
        for (int x = 0; x < size; x++) {
            twice += degree(x);
        }
        return twice / 2;
    }

    private int degree(int x) {
        int degree = 0;
        int[] lags = a.lags[operation[x]];
        for (int e = 0; e < lags.length; e += 3) {
            if (localOf[lags[e]] >= 0) {
                degree++;
            }
        }
        return degree;
    }

    private int root() {
        int best = 0;
        for (int x = 0; x < size; x++) {
            int s = a.stay[operation[x]];
            if (s >= 0 && a.stayLift[s] == operation[x] && localOf[a.stayLaunch[s]] >= 0) {
                cyclic = true;
                return x;
            }
            if (degree(x) > degree(best)) {
                best = x;
            }
        }
        return best;
    }
}

package sternwright.season.search;

import java.util.SplittableRandom;
import sternwright.season.arrays.MarginalCost;
import sternwright.season.arrays.SeasonArrays;
import sternwright.season.arrays.Timetable;

/**
 * Puts operations of one half back where they cost least together.
 *
 * <p>Along the tree of lags the least cost of every start of the root is found by dynamic programming (each operation's own marginal
 * cost, plus the least of each child's within its lag). Where a lag or a stay closes a ring, the root's starts are tried in order
 * of that cost, each with the others' windows narrowed to it, until none can be better. Operations then go in from the root
 * outwards; if one costs more than foreseen because of one just placed, its starts are costed again.
 */
final class Insertion {
    private static final int NEVER = MarginalCost.NEVER;

    /** Widest window costed at once for an operation with a date, in quarters. */
    private static final int REACH = 240;

    /** Widest window costed at once for an operation that may lie anywhere. */
    private static final int ROAM = 100;

    /** While wandering, one operation in so many goes to the best start of a random part of its window. */
    private static final int WANDER = 8;

    private final SeasonArrays a;
    private final Timetable t;
    private final MarginalCost marginal;
    private final SplittableRandom random;
    private final Lags lags;
    private final SlidingMinimum sliding = new SlidingMinimum();
    private final boolean[] roams;
    private int[][] own = new int[0][];
    private int[][] up = new int[0][];
    private int[] base = new int[0];
    private int[] fullLow = new int[0];
    private int[] fullHigh = new int[0];
    private int from;
    private int to;
    private boolean wanders;

    Insertion(Timetable timetable, SplittableRandom random) {
        this.t = timetable;
        this.a = timetable.a;
        this.random = random;
        marginal = new MarginalCost(timetable);
        lags = new Lags(a);
        to = a.quarters;
        roams = new boolean[a.n];
        for (int i = 0; i < a.n; i++) {
            roams[i] = roams(i);
        }
    }

    /** Only starts and ends between these two quarters are used from now on. */
    void between(int firstQ, int endQ) {
        from = firstQ;
        to = endQ;
    }

    /** Whether some operations go elsewhere than where they cost least, so that not all plans look alike. */
    void wander(boolean on) {
        wanders = on;
    }

    private boolean roams(int i) {
        if (a.latePerQ[i] > 0 || a.earlyPerQ[i] > 0 || a.promised[i] >= 0 || a.stay[i] >= 0) {
            return false;
        }
        int[] l = a.lags[i];
        for (int e = 0; e < l.length; e += 3) {
            if (l[e + 1] > -sternwright.season.Lag.FREE && l[e + 2] < sternwright.season.Lag.FREE) {
                return false;
            }
        }
        return true;
    }

    /** Places every operation of half {@code h} that is not placed; on failure nothing is placed and false comes back. */
    boolean half(int h) {
        return place(h, false) || place(h, true);
    }

    private boolean place(int h, boolean wholeWindows) {
        lags.clear();
        for (int i : a.halfOperations[h]) {
            if (t.start[i] == Timetable.OUT && !lags.add(i)) {
                return false;
            }
        }
        if (lags.size == 0) {
            return true;
        }
        if (!lags.windows(t, from, to) || !wholeWindows && !limitReach()) {
            return false;
        }
        lags.tree();
        room();
        for (int x = 0; x < lags.size; x++) {
            base[x] = lags.low[x];
            marginal.fill(lags.operation[x], lags.low[x], lags.high[x], own[x]);
        }
        messages();
        return (!lags.cyclic || settleRoot()) && outwards();
    }

    private boolean limitReach() {
        for (int x = 0; x < lags.size; x++) {
            int i = lags.operation[x];
            int width = lags.high[x] - lags.low[x];
            if (roams[i]) {
                width = Math.min(width, Math.max(a.easyLatest[i] - lags.low[x], 0));
                lags.low[x] += width > ROAM ? random.nextInt(width - ROAM + 1) : 0;
                lags.high[x] = Math.min(lags.high[x], lags.low[x] + Math.min(width, ROAM));
            } else if (!roams[i] && width > REACH) {
                int wish = a.promised[i] >= 0 ? a.promised[i] : a.latePerQ[i] > 0 ? a.due[i] - a.length[i] : 0;
                lags.high[x] = Math.min(lags.high[x], Math.max(lags.low[x] + REACH, wish + REACH / 4));
            }
        }
        return lags.tighten();
    }

    private void room() {
        if (own.length < lags.size) {
            own = new int[2 * lags.size][a.quarters + 1];
            up = new int[2 * lags.size][a.quarters + 1];
            base = new int[2 * lags.size];
            fullLow = new int[2 * lags.size];
            fullHigh = new int[2 * lags.size];
        }
    }

    /** From the leaves to the root: least cost of each operation's start with all that hangs on it. */
    private void messages() {
        for (int x = 0; x < lags.size; x++) {
            int offset = lags.low[x] - base[x];
            System.arraycopy(own[x], offset, up[x], offset, lags.high[x] - lags.low[x] + 1);
        }
        for (int at = lags.size - 1; at > 0; at--) {
            int x = lags.order[at];
            int p = lags.parent[x];
            sliding.addTo(
                    up[p],
                    base[p],
                    lags.low[p],
                    lags.high[p],
                    up[x],
                    base[x],
                    lags.low[x],
                    lags.high[x],
                    lags.lagMin[x],
                    lags.lagMax[x]);
        }
    }

    /** Rings: tries starts of the root, cheapest first, with the others narrowed to it; leaves the windows of the best. */
    private boolean settleRoot() {
        int root = lags.order[0];
        int low = lags.low[root];
        int width = lags.high[root] - low + 1;
        int[] hope = java.util.Arrays.copyOfRange(up[root], low - base[root], low - base[root] + width);
        System.arraycopy(lags.low, 0, fullLow, 0, lags.size);
        System.arraycopy(lags.high, 0, fullHigh, 0, lags.size);
        while (true) {
            int best = least(hope, 0, width);
            if (hope[best] >= NEVER) {
                return false;
            }
            int value = narrowed(root, low + best);
            if (value <= hope[best]) {
                return true;
            }
            hope[best] = value;
        }
    }

    private int narrowed(int root, int q) {
        System.arraycopy(fullLow, 0, lags.low, 0, lags.size);
        System.arraycopy(fullHigh, 0, lags.high, 0, lags.size);
        lags.low[root] = q;
        lags.high[root] = q;
        int s = a.stay[lags.operation[root]];
        if (s >= 0 && a.stayLift[s] == lags.operation[root]) {
            int y = lags.local(a.stayLaunch[s]);
            if (y >= 0) {
                int launch = lags.operation[y];
                int free = marginal.lastFreeFrom(s, q, lags.high[y] + a.length[launch]);
                lags.high[y] = Math.min(lags.high[y], free - a.length[launch]);
            }
        }
        if (!lags.tighten()) {
            return NEVER;
        }
        messages();
        return up[root][q - base[root]];
    }

    /** Index of a least entry, the first one found from a random beginning. */
    private int least(int[] values, int first, int end) {
        int turn = first + random.nextInt(end - first);
        int best = turn;
        for (int v = turn + 1; v < end; v++) {
            if (values[v] < values[best]) {
                best = v;
            }
        }
        for (int v = first; v < turn; v++) {
            if (values[v] < values[best]) {
                best = v;
            }
        }
        return best;
    }

    private boolean outwards() {
        for (int at = 0; at < lags.size; at++) {
            if (!placeBest(lags.order[at])) {
                for (int back = 0; back < at; back++) {
                    t.remove(lags.operation[lags.order[back]]);
                }
                return false;
            }
        }
        return true;
    }

    private boolean placeBest(int x) {
        int i = lags.operation[x];
        int low = lags.low[x];
        int high = lags.high[x];
        int[] l = a.lags[i];
        for (int e = 0; e < l.length; e += 3) {
            int s = t.start[l[e]];
            if (s != Timetable.OUT) {
                low = Math.max(low, s - l[e + 2]);
                high = Math.min(high, s - l[e + 1]);
            }
        }
        if (low > high) {
            return false;
        }
        if (wanders && random.nextInt(WANDER) == 0) {
            low += random.nextInt(high - low + 1);
            high -= random.nextInt(high - low + 1);
        }
        int best = base[x] + least(up[x], low - base[x], high - base[x] + 1);
        int[] fresh = own[own.length - 1 - x];
        marginal.fill(i, best, best, fresh);
        if (fresh[0] > own[x][best - base[x]]) {
            best = again(x, i, low, high, fresh);
        }
        if (up[x][best - base[x]] >= NEVER) {
            return false;
        }
        t.add(i, best);
        return true;
    }

    private int again(int x, int i, int low, int high, int[] fresh) {
        marginal.fill(i, low, high, fresh);
        for (int q = low; q <= high; q++) {
            int was = own[x][q - base[x]];
            int rest = up[x][q - base[x]];
            up[x][q - base[x]] = rest >= NEVER ? NEVER : Math.min(NEVER, rest - was + fresh[q - low]);
        }
        return base[x] + least(up[x], low - base[x], high - base[x] + 1);
    }
}

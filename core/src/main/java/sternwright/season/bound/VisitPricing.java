package sternwright.season.bound;

import sternwright.season.arrays.SeasonArrays;

/** Plans each visit alone and best at given prices, by dynamic programming along its tree. */
final class VisitPricing {
    private static final double NEVER = 1e12;
    private static final int MOST = 32;

    private final SeasonArrays a;
    private final int[] latest;
    private final double[][] up = new double[MOST][];
    private final int[][] choice = new int[MOST][];
    private final int[] position = new int[MOST];
    private final int[] queue;
    private final double[][] fixed;

    /**
     * Pricing of visits of {@code a}.
     *
     * @param latest latest starts worth looking at
     */
    VisitPricing(SeasonArrays a, int[] latest) {
        this.a = a;
        this.latest = latest;
        queue = new int[a.quarters + 1];
        fixed = new double[a.n][0];
        for (int x = 0; x < MOST; x++) {
            up[x] = new double[a.quarters + 1];
            choice[x] = new int[a.quarters + 1];
        }
    }

    /** Least cost of the visit; what its best plan uses is counted in {@code usage}. */
    double price(VisitTree tree, Prices prices, Usage usage) {
        int size = tree.operation.length;
        for (int x = 0; x < size; x++) {
            own(tree.operation[x], prices, up[x]);
        }
        for (int x = size - 1; x > 0; x--) {
            send(tree, x);
        }
        int root = tree.operation[0];
        int best = 0;
        for (int q = 1; q <= latest[root] - a.earliest[root]; q++) {
            best = up[0][q] < up[0][best] ? q : best;
        }
        double value = up[0][best];
        position[0] = a.earliest[root] + best;
        usage.count(root, position[0]);
        for (int x = 1; x < size; x++) {
            int p = tree.parent[x];
            position[x] = choice[x][position[p] - a.earliest[tree.operation[p]]];
            usage.count(tree.operation[x], position[x]);
        }
        return value;
    }

    private void own(int i, Prices prices, double[] out) {
        double[] fixed = fixed(i);
        int low = a.earliest[i];
        int count = fixed.length;
        System.arraycopy(fixed, 0, out, 0, count);
        if (a.skill[i] >= 0) {
            addUse(prices.bySkill[a.skill[i]], low, a.length[i], a.hands[i], out, count);
        }
        if (a.liftClass[i] >= 0) {
            addUse(prices.byLift[a.liftClass[i]], low, a.length[i], 1, out, count);
        }
        stayAndPools(i, prices, out);
    }

    private static void addUse(double[] sums, int low, int length, int amount, double[] out, int count) {
        for (int x = 0; x < count; x++) {
            out[x] += amount * (sums[low + x + length] - sums[low + x]);
        }
    }

    /** What does not change with the prices: dates, promises, days. */
    private double[] fixed(int i) {
        if (fixed[i].length == 0) {
            fixed[i] = new double[latest[i] - a.earliest[i] + 1];
            for (int x = 0; x < fixed[i].length; x++) {
                int q = a.earliest[i] + x;
                fixed[i][x] = a.dayAllowed(i, q) ? a.startCost(i, q) : NEVER;
            }
        }
        return fixed[i];
    }

    private void stayAndPools(int i, Prices prices, double[] out) {
        int low = a.earliest[i];
        int s = a.stay[i];
        int[] needs = a.needs[i];
        if (s < 0 && needs.length == 0) {
            return;
        }
        for (int q = low; q <= latest[i]; q++) {
            if (s >= 0) {
                double[] sums = prices.byPlace[a.stayClass[s]];
                out[q - low] += i == a.stayLift[s] ? -sums[q] : sums[q + a.length[i]];
            }
            for (int x = 0; x < needs.length; x += 2) {
                double[] sums = prices.byPool[needs[x]];
                out[q - low] += needs[x + 1] * (sums[q + a.length[i]] - sums[q]);
            }
        }
    }

    /** Adds to the parent of {@code x}, for each of its starts, the least cost of {@code x} within the lag. */
    private void send(VisitTree tree, int x) {
        int i = tree.operation[x];
        int p = tree.operation[tree.parent[x]];
        double[] values = up[x];
        double[] out = up[tree.parent[x]];
        int[] pick = choice[x];
        int low = a.earliest[i];
        int head = 0;
        int tail = 0;
        int next = low;
        for (int t = a.earliest[p]; t <= latest[p]; t++) {
            int last = Math.min(latest[i], t + tree.lagMax[x]);
            for (; next <= last; next++) {
                double value = values[next - low];
                while (tail > head && values[queue[tail - 1] - low] >= value) {
                    tail--;
                }
                queue[tail++] = next;
            }
            while (head < tail && queue[head] < t + tree.lagMin[x]) {
                head++;
            }
            int at = t - a.earliest[p];
            out[at] += head < tail ? values[queue[head] - low] : NEVER;
            pick[at] = head < tail ? queue[head] : low;
        }
    }
}

package sternwright.protection.solver;

import java.util.Arrays;

/**
 * Elimination order for a sparse symmetric matrix: always the unknown with the fewest neighbours left (Tinney and Walker 1967). Trees
 * and chains, which is what bonding looks like, are eliminated without any fill.
 */
final class MinimumDegree {
    private final int[][] neighbours;
    private final int[] next;
    private final int[] previous;
    private final int[] bucket;
    private final int[] releases;
    private final int[] waiting;

    private MinimumDegree(int[][] neighbours, int[] releases) {
        this.neighbours = neighbours;
        this.releases = releases;
        waiting = new int[neighbours.length];
        for (int r : releases) {
            if (r >= 0) {
                waiting[r]++;
            }
        }
        int n = neighbours.length;
        next = new int[n];
        previous = new int[n];
        bucket = new int[n + 1];
        Arrays.fill(bucket, -1);
        for (int i = n - 1; i >= 0; i--) {
            insert(i);
        }
    }

    /**
     * The order of elimination.
     *
     * @param neighbours for each unknown its neighbours, sorted, each pair on both sides; the rows are replaced while working
     * @param releases for each unknown the one that may come only after it, or -1
     */
    static int[] order(int[][] neighbours, int[] releases) {
        return new MinimumDegree(neighbours, releases).run();
    }

    private int[] run() {
        int n = neighbours.length;
        int[] order = new int[n];
        int lowest = 0;
        for (int k = 0; k < n; k++) {
            while (bucket[lowest] < 0) {
                lowest++;
            }
            int pivot = bucket[lowest];
            remove(pivot);
            order[k] = pivot;
            int[] around = neighbours[pivot];
            for (int u : around) {
                remove(u);
                neighbours[u] = merged(neighbours[u], around, u, pivot);
                insert(u);
            }
            neighbours[pivot] = new int[0];
            int freed = releases[pivot];
            if (freed >= 0 && --waiting[freed] == 0) {
                insert(freed);
                lowest = Math.min(lowest, neighbours[freed].length);
            }
            lowest = Math.max(0, lowest - 1);
        }
        return order;
    }

    /** Union of two sorted rows without the two unknowns named. */
    private static int[] merged(int[] a, int[] b, int self, int gone) {
        int[] out = new int[a.length + b.length];
        int n = 0;
        int i = 0;
        int j = 0;
        while (i < a.length || j < b.length) {
            int x = i < a.length ? a[i] : Integer.MAX_VALUE;
            int y = j < b.length ? b[j] : Integer.MAX_VALUE;
            int z = Math.min(x, y);
            i += x == z ? 1 : 0;
            j += y == z ? 1 : 0;
            if (z != self && z != gone) {
                out[n++] = z;
            }
        }
        return n == out.length ? out : Arrays.copyOf(out, n);
    }

    private void insert(int i) {
        if (waiting[i] > 0) {
            return;
        }
        int degree = neighbours[i].length;
        next[i] = bucket[degree];
        previous[i] = -1;
        if (bucket[degree] >= 0) {
            previous[bucket[degree]] = i;
        }
        bucket[degree] = i;
    }

    private void remove(int i) {
        if (waiting[i] > 0) {
            return;
        }
        if (previous[i] >= 0) {
            next[previous[i]] = next[i];
        } else {
            bucket[neighbours[i].length] = next[i];
        }
        if (next[i] >= 0) {
            previous[next[i]] = previous[i];
        }
    }
}

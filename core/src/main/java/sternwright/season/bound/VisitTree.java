package sternwright.season.bound;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import sternwright.season.Lag;
import sternwright.season.arrays.SeasonArrays;

/**
 * One visit as a tree of lags. Where its lags close rings, the loosest are left out: that can only make the visit cheaper, so a bound
 * stays a bound.
 */
final class VisitTree {
    /** Operations, the root first, each after its parent. */
    final int[] operation;

    /** Index in {@link #operation} of each one's parent, -1 for the root. */
    final int[] parent;

    /** Least start of the operation after its parent's. */
    final int[] lagMin;

    /** Greatest start of the operation after its parent's. */
    final int[] lagMax;

    private record Edge(int from, int to, int min, int max) {
        int looseness() {
            return max - min;
        }
    }

    private VisitTree(int[] operation, int[] parent, int[] lagMin, int[] lagMax) {
        this.operation = operation;
        this.parent = parent;
        this.lagMin = lagMin;
        this.lagMax = lagMax;
    }

    static VisitTree of(SeasonArrays a, int visit) {
        int[] ops = IntStream.of(a.visitHalves[visit])
                .flatMap(h -> IntStream.of(a.halfOperations[h]))
                .toArray();
        List<Edge> tree = spanning(ops, edges(a, ops));
        int[] order = new int[ops.length];
        int[] parent = new int[ops.length];
        int[] min = new int[ops.length];
        int[] max = new int[ops.length];
        boolean[] seen = new boolean[ops.length];
        int joined = 0;
        for (int root = 0; root < ops.length; root++) {
            if (!seen[root]) {
                seen[root] = true;
                order[joined] = root;
                parent[joined] = joined == 0 ? -1 : 0;
                min[joined] = -2 * Lag.FREE;
                max[joined++] = 2 * Lag.FREE;
            }
            for (int done = joined - 1; done < joined; done++) {
                joined = grow(tree, order, parent, min, max, seen, done, joined);
            }
        }
        return new VisitTree(IntStream.of(order).map(x -> ops[x]).toArray(), parent, min, max);
    }

    private static int grow(
            List<Edge> tree, int[] order, int[] parent, int[] min, int[] max, boolean[] seen, int at, int joined) {
        int end = joined;
        for (Edge e : tree) {
            boolean forward = e.from == order[at];
            int other = forward ? e.to : e.to == order[at] ? e.from : -1;
            if (other >= 0 && !seen[other]) {
                seen[other] = true;
                order[end] = other;
                parent[end] = at;
                min[end] = forward ? e.min : -e.max;
                max[end++] = forward ? e.max : -e.min;
            }
        }
        return end;
    }

    private static List<Edge> edges(SeasonArrays a, int[] ops) {
        List<Edge> edges = new ArrayList<>();
        for (int x = 0; x < ops.length; x++) {
            int[] lags = a.lags[ops[x]];
            for (int e = 0; e < lags.length; e += 3) {
                for (int y = x + 1; y < ops.length; y++) {
                    if (ops[y] == lags[e]) {
                        edges.add(new Edge(x, y, lags[e + 1], lags[e + 2]));
                    }
                }
            }
        }
        edges.sort(Comparator.comparingInt(Edge::looseness));
        return edges;
    }

    private static List<Edge> spanning(int[] ops, List<Edge> edges) {
        int[] group = IntStream.range(0, ops.length).toArray();
        List<Edge> tree = new ArrayList<>();
        for (Edge e : edges) {
            int from = group[e.from];
            int to = group[e.to];
            if (from != to) {
                tree.add(e);
                for (int x = 0; x < group.length; x++) {
                    group[x] = group[x] == to ? from : group[x];
                }
            }
        }
        return tree;
    }
}

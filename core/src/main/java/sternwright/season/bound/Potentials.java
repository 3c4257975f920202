package sternwright.season.bound;

import com.google.ortools.graph.MinCostFlow;
import java.util.Arrays;

/**
 * Node potentials of a flow of least cost: shortest paths through what can still be changed of it (L. R. Ford and D. R. Fulkerson,
 * 'Flows in Networks', Princeton 1962, ch. III). What a full arc is worth is the difference of its ends' potentials.
 */
final class Potentials {
    private static final int NONE = -1;

    private final int nodes;
    private final int[] first;
    private final int[] next;
    private final int[] to;
    private final long[] cost;

    private Potentials(MinCostFlow flow, int nodes, boolean backwards) {
        this.nodes = nodes;
        int arcs = flow.getNumArcs();
        first = new int[nodes];
        Arrays.fill(first, NONE);
        next = new int[2 * arcs];
        to = new int[2 * arcs];
        cost = new long[2 * arcs];
        for (int e = 0; e < arcs; e++) {
            int tail = backwards ? flow.getHead(e) : flow.getTail(e);
            int head = backwards ? flow.getTail(e) : flow.getHead(e);
            if (flow.getFlow(e) < flow.getCapacity(e)) {
                arc(2 * e, tail, head, flow.getUnitCost(e));
            }
            if (flow.getFlow(e) > 0) {
                arc(2 * e + 1, head, tail, -flow.getUnitCost(e));
            }
        }
    }

    /** The least potentials, measured from nowhere in particular, none above 0. */
    static long[] least(MinCostFlow flow, int nodes) {
        return new Potentials(flow, nodes, false).shortest();
    }

    /** The greatest potentials, none below 0. */
    static long[] greatest(MinCostFlow flow, int nodes) {
        long[] back = new Potentials(flow, nodes, true).shortest();
        return Arrays.stream(back).map(d -> -d).toArray();
    }

    private void arc(int e, int tail, int head, long unitCost) {
        next[e] = first[tail];
        first[tail] = e;
        to[e] = head;
        cost[e] = unitCost;
    }

    /** Distances from a node that reaches every other at no cost; a flow of least cost has no ring that makes them endless. */
    private long[] shortest() {
        long[] distance = new long[nodes];
        boolean[] waiting = new boolean[nodes];
        Arrays.fill(waiting, true);
        int[] queue = new int[nodes];
        Arrays.setAll(queue, node -> node);
        int head = 0;
        for (int left = nodes; left > 0; left--) {
            int node = queue[head];
            head = (head + 1) % nodes;
            waiting[node] = false;
            for (int e = first[node]; e != NONE; e = next[e]) {
                int other = to[e];
                if (distance[node] + cost[e] < distance[other]) {
                    distance[other] = distance[node] + cost[e];
                    if (!waiting[other]) {
                        waiting[other] = true;
                        queue[(head + left - 1) % nodes] = other;
                        left++;
                    }
                }
            }
        }
        return distance;
    }
}

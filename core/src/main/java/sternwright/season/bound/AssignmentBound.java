package sternwright.season.bound;

import com.google.ortools.Loader;
import com.google.ortools.graph.MinCostFlow;
import com.google.ortools.graph.MinCostFlowBase;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import sternwright.season.Bound;
import sternwright.season.arrays.Limits;
import sternwright.season.arrays.SeasonArrays;

/**
 * Launches compete for the hoists: the cheapest way to give each dated lift or launch a slot of its own, as a flow of least cost, and
 * every other operation at the cheapest start of its own window. The flow also says what a slot is worth, which is where
 * {@link LagrangianBound} begins.
 */
public final class AssignmentBound {
    private final SeasonArrays a;
    private final int[] latest;
    private final List<Integer> sets = new ArrayList<>();
    private final int[] parent;
    private final double[] hoistPrices;
    private final Bound bound;

    private AssignmentBound(SeasonArrays a, long upper) {
        this.a = a;
        latest = Reach.latest(a, upper);
        Limits limits = a.hoists;
        IntStream.range(0, limits.count)
                .boxed()
                .sorted((x, y) -> limits.kindsOf[y].length - limits.kindsOf[x].length)
                .filter(this::nested)
                .forEach(sets::add);
        parent = new int[limits.count];
        Arrays.fill(parent, -1);
        for (int s : sets) {
            for (int t : sets) {
                if (t != s
                        && contains(t, s)
                        && (parent[s] < 0 || limits.kindsOf[t].length < limits.kindsOf[parent[s]].length)) {
                    parent[s] = t;
                }
            }
        }
        hoistPrices = new double[limits.capacity.length];
        bound = solved();
    }

    /**
     * The bound of season {@code a}.
     *
     * @param upper cost of a plan already found
     */
    public static AssignmentBound of(SeasonArrays a, long upper) {
        return new AssignmentBound(a, upper);
    }

    /** The bound. */
    public Bound bound() {
        return bound;
    }

    /** What one slot more would save, by limit and quarter as in {@link SeasonArrays#hoists}. */
    double[] hoistPrices() {
        return hoistPrices;
    }

    /** Only limits that lie within or beside each other make a tree; others are left out, which keeps the bound a bound. */
    private boolean nested(int set) {
        return sets.stream().allMatch(other -> contains(other, set) || disjoint(other, set));
    }

    private boolean contains(int outer, int inner) {
        return Arrays.stream(a.hoists.kindsOf[inner])
                .allMatch(k -> Arrays.stream(a.hoists.kindsOf[outer]).anyMatch(o -> o == k));
    }

    private boolean disjoint(int one, int two) {
        return Arrays.stream(a.hoists.kindsOf[one])
                .noneMatch(k -> Arrays.stream(a.hoists.kindsOf[two]).anyMatch(o -> o == k));
    }

    private Bound solved() {
        int[] dated = IntStream.range(0, a.n)
                .filter(i -> a.liftClass[i] >= 0 && (a.latePerQ[i] > 0 || a.earlyPerQ[i] > 0 || a.promised[i] >= 0))
                .toArray();
        long easy = EasyBound.of(a).value();
        if (dated.length == 0 || sets.isEmpty()) {
            return new Bound(easy, "every operation at its own cheapest date");
        }
        for (int i : dated) {
            easy -= EasyBound.least(a, i);
        }
        long flow = flow(dated);
        return new Bound(
                Math.max(EasyBound.of(a).value(), easy + flow),
                "every dated lift and launch in a slot of its own, everything else at its own cheapest date");
    }

    private long flow(int[] dated) {
        Loader.loadNativeLibraries();
        MinCostFlow flow = new MinCostFlow();
        int firstSlot = dated.length;
        int sink = firstSlot + a.quarters * a.hoists.count;
        for (int x = 0; x < dated.length; x++) {
            int i = dated[x];
            int set = smallest(a.liftClass[i]);
            for (int q = a.earliest[i]; set >= 0 && q <= latest[i]; q++) {
                if (a.dayAllowed(i, q)) {
                    flow.addArcWithCapacityAndUnitCost(x, slot(firstSlot, q, set), 1, a.startCost(i, q));
                }
            }
            flow.setNodeSupply(x, 1);
        }
        for (int set : sets) {
            for (int q = 0; q < a.quarters; q++) {
                int to = parent[set] < 0 ? sink : slot(firstSlot, q, parent[set]);
                int capacity = a.hoists.capacity[q * a.hoists.count + set];
                flow.addArcWithCapacityAndUnitCost(slot(firstSlot, q, set), to, capacity, 0);
            }
        }
        flow.setNodeSupply(sink, -dated.length);
        if (flow.solve() != MinCostFlowBase.Status.OPTIMAL) {
            return 0;
        }
        price(flow, firstSlot, sink);
        return flow.getOptimalCost();
    }

    /** Of the slot prices that prove the flow least, the ones halfway between the lowest and the highest. */
    private void price(MinCostFlow flow, int firstSlot, int sink) {
        long[] least = Potentials.least(flow, sink + 1);
        long[] greatest = Potentials.greatest(flow, sink + 1);
        for (int set : sets) {
            for (int q = 0; q < a.quarters; q++) {
                int from = slot(firstSlot, q, set);
                int to = parent[set] < 0 ? sink : slot(firstSlot, q, parent[set]);
                double twice = least[to] - least[from] + greatest[to] - greatest[from];
                hoistPrices[q * a.hoists.count + set] = Math.max(0, twice / 2);
            }
        }
    }

    private int slot(int first, int q, int set) {
        return first + q * a.hoists.count + set;
    }

    private int smallest(int kind) {
        return sets.stream()
                .filter(s -> Arrays.stream(a.hoists.kindsOf[s]).anyMatch(k -> k == kind))
                .min((x, y) -> a.hoists.kindsOf[x].length - a.hoists.kindsOf[y].length)
                .orElse(-1);
    }
}

package sternwright.season.bound;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.stream.IntStream;
import sternwright.season.Bound;
import sternwright.season.arrays.SeasonArrays;

/**
 * Finds prices for the limits at which the separately planned visits cost most, which is the bound.
 *
 * <p>The slots of the hoists begin at what they are worth to the dated launches alone, so the first value is never below that of the
 * {@link AssignmentBound}. All prices are multiples of {@link Prices#GRAIN}, so every sum is exact and no rounding can lift the bound.
 */
public final class LagrangianBound {
    private static final double LONGEST_STRIDE = 0.3;
    private static final double SHORTEST_STRIDE = 0.001;

    /** Short strides first: with few steps to make they are what raises the bound at all. */
    private static final double NARROW_UNTIL = 0.3;

    private static final String HOW =
            "every limit of people, hoists and places priced by quarter, every visit planned alone (Lagrangian relaxation)";

    private final SeasonArrays a;
    private final Prices prices;
    private final Ascent ascent;
    private final List<Share> shares = new ArrayList<>();
    private final int even;
    private final Bound before;
    private long steps;
    private double bestValue = Double.NEGATIVE_INFINITY;

    /** A part of the visits, priced by one thread. */
    private record Share(VisitPricing pricing, Usage usage, List<VisitTree> trees) {
        double value(Prices prices) {
            usage.clear();
            double sum = 0;
            for (VisitTree tree : trees) {
                sum += pricing.price(tree, prices, usage);
            }
            return sum;
        }
    }

    /**
     * A bound on season {@code a}.
     *
     * @param upper cost of a plan already found; dearer plans need not be looked at
     * @param launches the bound of the launches alone
     * @param threads how many threads price visits, at least 1
     */
    public LagrangianBound(SeasonArrays a, long upper, AssignmentBound launches, int threads) {
        this.a = a;
        before = launches.bound();
        prices = new Prices(a);
        System.arraycopy(launches.hoistPrices(), 0, prices.hoists, 0, prices.hoists.length);
        ascent = new Ascent(a, prices, upper - before.value());
        even = a.problem.yard().evenHands();
        int[] latest = Reach.latest(a, upper);
        for (int thread = 0; thread < threads; thread++) {
            int part = thread;
            List<VisitTree> trees = IntStream.range(0, a.visitHalves.length)
                    .filter(v -> v % threads == part)
                    .mapToObj(v -> VisitTree.of(a, v))
                    .filter(tree -> tree.operation.length > 0)
                    .toList();
            shares.add(new Share(new VisitPricing(a, latest), new Usage(a), trees));
        }
    }

    /** The best bound so far. */
    public Bound bound() {
        long value = (long) Math.ceil(bestValue);
        return value > before.value() ? new Bound(value, HOW) : before;
    }

    /** The best value so far, not rounded up. */
    public double value() {
        return bestValue;
    }

    /**
     * Makes one more step towards better prices.
     *
     * @param spent spent part of the time there is, 0 to 1: steps get shorter with it
     */
    public void improve(double spent) {
        prices.addUp();
        double value = evaluate();
        if (value > bestValue) {
            bestValue = value;
        }
        if (spent > NARROW_UNTIL) {
            ascent.widen();
        }
        ascent.step(shares.get(0).usage, LONGEST_STRIDE * Math.pow(SHORTEST_STRIDE / LONGEST_STRIDE, spent));
        steps++;
    }

    /** Steps made. */
    public long steps() {
        return steps;
    }

    private double evaluate() {
        List<CompletableFuture<Double>> others = shares.stream()
                .skip(1)
                .map(share -> CompletableFuture.supplyAsync(() -> share.value(prices)))
                .toList();
        double value = shares.get(0).value(prices);
        for (CompletableFuture<Double> other : others) {
            value += other.join();
        }
        Usage all = shares.get(0).usage;
        shares.stream().skip(1).forEach(share -> all.add(share.usage));
        all.compare(prices, even);
        return value - prices.worth(even);
    }
}

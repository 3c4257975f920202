package sternwright.visit.solver;

import java.util.Arrays;
import java.util.PriorityQueue;
import org.jspecify.annotations.Nullable;
import sternwright.visit.problem.Proof;

/**
 * The whole search for one problem: first plan, prices, striking out, then branches in the order of their bounds. Costs are
 * whole cents, so a branch whose bound is within a cent of the best plan holds nothing better.
 */
final class BranchAndBound {
    private static final double CENT = 1 - 1e-4;
    private static final int ROOT_STEPS = 60;
    private static final int ROOT_ROUNDS = 14;
    private static final int BRANCH_STEPS = 60;
    private static final int ROUNDING_STEPS = 300;
    private static final double[] ROUNDED_AT = {0.5, 0.3, 0.7};
    private static final int CLEAR_STEPS = 60;

    private final PathModel model;
    private final SolveLimits limits;
    private final long started;
    private final Scope scope;
    private final PricedBound bound;
    private final LocalSearch search;
    private final Branching branching;
    private final PriorityQueue<Branch> open = new PriorityQueue<>();
    private double least;
    private long nodes;

    /** A branch not looked at yet. */
    private record Branch(double bound, int depth, @Nullable Decision decision, Prices prices)
            implements Comparable<Branch> {
        @Override
        public int compareTo(Branch other) {
            int byBound = Double.compare(bound, other.bound);
            return byBound != 0 ? byBound : Integer.compare(other.depth, depth);
        }
    }

    /** Prices to start from, held once for the two branches of a decision. */
    private static final class Prices {
        final float[] values;

        Prices(float[] values) {
            this.values = values;
        }
    }

    BranchAndBound(PathModel model, SolveLimits limits) {
        this.model = model;
        this.limits = limits;
        started = limits.nanoClock().getAsLong();
        scope = new Scope(model);
        bound = new PricedBound(model, scope);
        search = new LocalSearch(model);
        branching = new Branching(model, scope, bound);
        least = Double.NEGATIVE_INFINITY;
    }

    /** The best plan found. */
    Schedule best() {
        return search.best;
    }

    /** Milliseconds since the start, by the clock handed in. */
    long millis() {
        return (limits.nanoClock().getAsLong() - started) / 1_000_000;
    }

    /** Any plan that keeps the rules: the first found; null if none was. */
    @Nullable
    Schedule anyPlan() {
        first(null);
        if (!found()) {
            run();
        }
        return found() ? search.best : null;
    }

    /** Whether a plan is found that keeps every demand. */
    boolean found() {
        return search.best.cost < ScheduleBuilder.PER_VISIT_TOO_MANY;
    }

    /** Whether the search looked at everything. */
    boolean exhausted() {
        return open.isEmpty() || least >= cutoff();
    }

    /** Proof as it stands. */
    Proof proof() {
        double cost = search.best.cost;
        double low = Math.min(cost, least);
        long floor = low >= cost - CENT ? Math.round(cost) : (long) Math.ceil(low - 1e-4);
        Proof.Status status = floor >= Math.round(cost)
                ? Proof.Status.OPTIMAL
                : closeEnough() ? Proof.Status.WITHIN_GAP : Proof.Status.STOPPED;
        return new Proof(floor, status, millis(), nodes);
    }

    private boolean late() {
        return limits.nanos() < Long.MAX_VALUE && limits.nanoClock().getAsLong() - started > limits.nanos();
    }

    private boolean closeEnough() {
        return least >= cutoff() || (search.best.cost - least) <= limits.gap() * search.best.cost;
    }

    private double cutoff() {
        return search.best.cost - CENT;
    }

    /** The first plan: greedy, then bettered; falls back to choosing among all visits. */
    void first(@Nullable Schedule known) {
        search.greedy();
        if (!(search.best.cost < WorkPaths.NONE)) {
            search.everyVisit();
        }
        if (known != null && known.cost < search.best.cost) {
            search.best.copy(known);
        }
        bound.relaxation.refresh();
        least = Math.max(least, bound.improve(40, target(), this::late));
        search.from(likely(), bound.relaxation, bound.best);
        search.improve(600);
    }

    private double target() {
        return search.best.cost < WorkPaths.NONE ? cutoff() : 1e15;
    }

    private boolean[] likely() {
        return likely(0.5);
    }

    private boolean[] likely(double least) {
        boolean[] visits = new boolean[2 * model.horizon];
        for (int s = 0; s < visits.length; s++) {
            visits[s] = bound.average[s] > least;
        }
        return visits;
    }

    /** Plans on the visits that the averages of a long run of steps ask for: they tell more than those of a few. */
    private void rounded() {
        bound.restart(0.5);
        least = Math.max(least, bound.improve(ROUNDING_STEPS, target(), this::late));
        for (double share : ROUNDED_AT) {
            if (search.from(likely(share), bound.relaxation, bound.best) <= search.best.cost * 1.02) {
                search.improve(200);
            }
        }
    }

    /** Searches on until proven, close enough or out of time. */
    void run() {
        root();
        open.add(new Branch(least, 0, null, keep()));
        while (!open.isEmpty() && nodes < limits.nodes() && !late()) {
            least = Math.max(least, open.element().bound());
            if (closeEnough()) {
                return;
            }
            look(open.remove());
        }
        least = Math.max(
                least,
                open.isEmpty()
                        ? search.best.cost
                        : Math.min(search.best.cost, open.element().bound()));
    }

    private void root() {
        double mark = least;
        for (int round = 0; round < ROOT_ROUNDS && !closeEnough() && !late(); round++) {
            least = Math.max(least, bound.improve(ROOT_STEPS, target(), this::late));
            if (search.from(likely(), bound.relaxation, bound.best) <= search.best.cost * 1.02) {
                search.improve(200);
            }
            strike();
            if (round > 2 && least - mark < 2e-4 * Math.abs(least)) {
                break;
            }
            mark = least;
        }
        if (!closeEnough() && !late()) {
            rounded();
            strike();
        }
    }

    private void strike() {
        if (search.best.cost < WorkPaths.NONE) {
            scope.load(null);
            bound.relaxation.strike(bound.best, cutoff());
            scope.load(null);
            bound.relaxation.refresh();
        }
    }

    private Prices keep() {
        float[] values = new float[bound.best.length];
        for (int m = 0; m < values.length; m++) {
            values[m] = (float) bound.best[m];
        }
        return new Prices(values);
    }

    private void look(Branch branch) {
        nodes++;
        scope.load(branch.decision());
        bound.relaxation.refresh();
        for (int m = 0; m < bound.best.length; m++) {
            bound.best[m] = branch.prices().values[m];
        }
        bound.restart(0.3);
        double value = Math.max(branch.bound(), bound.improve(BRANCH_STEPS, target(), this::late));
        if (value >= target()) {
            return;
        }
        if (nodes % 4 == 1 && search.from(likely(), bound.relaxation, bound.best) <= search.best.cost * 1.01) {
            search.improve(150);
        }
        Decision choice = branching.choose(branch.decision());
        if (choice == null) {
            search.from(likely(), bound.relaxation, bound.best);
            bound.restart(0.3);
            value = Math.max(value, bound.improve(CLEAR_STEPS, target(), this::late));
            if (value >= target()) {
                return;
            }
            choice = branching.choose(branch.decision());
        }
        if (choice == null) {
            choice = branching.chooseAny(branch.decision());
        }
        if (choice == null) {
            choice = leaf(branch, value);
        }
        if (choice != null) {
            split(branch, choice, value);
        }
    }

    private void split(Branch branch, Decision choice, double value) {
        Prices prices = keep();
        Decision other = new Decision(choice.kind(), choice.index(), !choice.open(), choice.before());
        open.add(new Branch(value, branch.depth() + 1, choice, prices));
        open.add(new Branch(value, branch.depth() + 1, other, prices));
    }

    /**
     * Visits and set-ups are all decided: without prices the relaxation is the plan itself, unless a follower is missing or a
     * visit without work stands before the first doing of one of unknown history. Then that is decided next.
     */
    private @Nullable Decision leaf(Branch branch, double value) {
        Arrays.fill(bound.best, 0);
        double cost = bound.relaxation.evaluate(bound.best);
        if (!(cost < search.best.cost) || value >= cutoff()) {
            return null;
        }
        Schedule plan = new Schedule(2 * model.horizon, model.works);
        bound.relaxation.fill(plan);
        Decision missing = branching.unfollowed(plan, branch.decision());
        missing = missing == null ? branching.early(plan, branch.decision()) : missing;
        if (missing == null) {
            search.best.copy(plan);
            search.best.cost = cost;
        }
        return missing;
    }
}

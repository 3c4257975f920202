package sternwright.season.planner;

import java.util.List;
import java.util.function.LongSupplier;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import sternwright.season.Bound;
import sternwright.season.SeasonPlan;
import sternwright.season.SeasonProblem;
import sternwright.season.arrays.Plans;
import sternwright.season.arrays.SeasonArrays;
import sternwright.season.arrays.Timetable;
import sternwright.season.bound.AssignmentBound;
import sternwright.season.bound.EasyBound;
import sternwright.season.bound.LagrangianBound;
import sternwright.season.check.SeasonCheck;
import sternwright.season.exact.ExactSeason;
import sternwright.season.search.Budget;
import sternwright.season.search.FirstPlan;
import sternwright.season.search.SeasonSearch;
import sternwright.season.search.Watch;

/** Plans a season: a first plan at once, then better ones and a bound that rises, for as long as the budget lasts. */
public final class SeasonPlanner {
    private static final int GUIDE_CHARGE_PERCENT = 20;
    private static final int MOST_SEARCHED_EXACTLY = 1500;
    private static final double SECONDS_EXACTLY = 10;
    private static final double BOUND_FROM = 0.05;

    private final SeasonProblem problem;
    private final SeasonArrays a;
    private final long seed;
    private final Progress progress;
    private final BoundPace pace;

    private volatile Bound bound;
    private @Nullable LagrangianBound prices;

    /** How many steps of the bound are made between two rounds of the search. */
    @FunctionalInterface
    public interface BoundPace {
        /** No bound beyond the one at once. */
        BoundPace NONE = (made, spent) -> false;

        /**
         * Whether to make one more step now.
         *
         * @param made steps made so far
         * @param spent spent part of the budget
         */
        boolean more(long made, double spent);

        /** This share of the time, on a clock of nanoseconds that the caller brings. */
        static BoundPace share(double share, LongSupplier nanoClock) {
            return new TimedPace(share, nanoClock);
        }

        /** So many steps in all, spread evenly. */
        static BoundPace steps(long steps) {
            return (made, spent) -> made < steps * spent;
        }
    }

    private SeasonPlanner(SeasonProblem problem, long seed, Progress progress, BoundPace pace) {
        this.problem = problem;
        this.seed = seed;
        this.progress = progress;
        this.pace = pace;
        a = SeasonArrays.of(problem);
        bound = EasyBound.of(a);
    }

    /**
     * Plans {@code problem} from nothing.
     *
     * @param budget how long to search
     * @param seed seed of all random draws
     * @param pace how much of the work goes into the bound
     * @param progress is shown the progress
     * @throws SeasonAnswer.NoPlan if operations find no room; {@code relief} says what would help
     */
    public static SeasonAnswer plan(
            SeasonProblem problem, Budget budget, long seed, BoundPace pace, Progress progress) {
        SeasonPlanner planner = new SeasonPlanner(problem, seed, progress, pace);
        Timetable t = new Timetable(planner.a, GUIDE_CHARGE_PERCENT);
        List<Integer> out = FirstPlan.fill(t, seed);
        int[] starts = out.isEmpty() ? t.start : planner.searchedExactly();
        if (starts.length == 0) {
            throw new SeasonAnswer.NoPlan(out, planner.noRoom(out));
        }
        return planner.improve(starts, budget, SeasonSearch.Settings.fresh(seed));
    }

    /** Goes on from a plan already made; the answer is at least as good. */
    public static SeasonAnswer goOn(
            SeasonProblem problem, SeasonPlan plan, Budget budget, long seed, BoundPace pace, Progress progress) {
        SeasonPlanner planner = new SeasonPlanner(problem, seed, progress, pace);
        int[] starts = plan.startQ().stream().mapToInt(Integer::intValue).toArray();
        return planner.improve(starts, budget, SeasonSearch.Settings.polish(seed));
    }

    /** Where the quick way finds no plan and the season is small, the exact solver is asked; empty if it finds none either. */
    private int[] searchedExactly() {
        if (a.n > MOST_SEARCHED_EXACTLY) {
            return new int[0];
        }
        return new ExactSeason(a)
                .feasible(SECONDS_EXACTLY, 2).starts().stream()
                        .mapToInt(Integer::intValue)
                        .toArray();
    }

    private SeasonAnswer improve(int[] starts, Budget budget, SeasonSearch.Settings settings) {
        SeasonPlan first = proved(starts, "first plan");
        progress.better(() -> new SeasonAnswer(first, bound, first.cost().total()));
        int[] best = new SeasonSearch(a, settings).improve(starts, budget, new Watching(first));
        SeasonPlan plan = proved(best, "ruin and recreate, seed " + seed);
        return new SeasonAnswer(plan, bound, first.cost().total());
    }

    /** Passes on what the search shows. */
    private final class Watching implements Watch {
        private final SeasonPlan first;

        Watching(SeasonPlan first) {
            this.first = first;
        }

        @Override
        public boolean goOn(double spent, long points) {
            return watch(spent, points);
        }

        @Override
        public void better(int[] starts) {
            progress.better(() -> new SeasonAnswer(
                    proved(starts, "ruin and recreate, seed " + seed),
                    bound,
                    first.cost().total()));
        }
    }

    private boolean watch(double spent, long points) {
        if (prices == null && spent >= BOUND_FROM) {
            prices = new LagrangianBound(a, points, AssignmentBound.of(a, points), 2);
            prices.improve(spent);
        }
        LagrangianBound raising = prices;
        if (raising != null) {
            while (pace.more(raising.steps(), spent)) {
                raising.improve(spent);
            }
            raise(raising.bound());
        }
        return progress.goOn(spent, points, bound);
    }

    private void raise(Bound other) {
        if (other.value() > bound.value()) {
            bound = other;
        }
    }

    private SeasonPlan proved(int[] starts, String how) {
        SeasonPlan plan = Plans.of(a, starts, how);
        var violations = SeasonCheck.of(problem, plan);
        if (!violations.isEmpty()) {
            throw new SeasonAnswer.RefusedByJudge(violations);
        }
        return plan;
    }

    private String noRoom(List<Integer> out) {
        return "no room in the season for " + out.size() + " operations: "
                + out.stream().limit(5).map(problem::phrase).collect(Collectors.joining(", "))
                + (out.size() > 5 ? ", ..." : "");
    }
}

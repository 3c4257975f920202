package sternwright.app.desk.season;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import sternwright.app.files.SeasonFolder;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.problem.Problem;
import sternwright.season.Bound;
import sternwright.season.SeasonPlan;
import sternwright.season.SeasonProblem;
import sternwright.season.arrays.Plans;
import sternwright.season.arrays.SeasonArrays;
import sternwright.season.bound.AssignmentBound;
import sternwright.season.bound.EasyBound;
import sternwright.season.check.SeasonCheck;
import sternwright.season.check.Violation;
import sternwright.season.dated.OperationName;
import sternwright.season.dated.Published;
import sternwright.season.dated.make.SeasonOfYard;
import sternwright.season.planner.SeasonAnswer;
import sternwright.season.replan.Replanner;

/**
 * A plan that was written down, put to a season.
 *
 * @param held the season it holds in, null if in none
 * @param wrong what stands against it; empty if it holds
 */
record KeptPlan(@Nullable Held held, List<String> wrong) {
    private static final int MOST_TOLD = 6;

    KeptPlan {
        wrong = List.copyOf(wrong);
    }

    /**
     * A plan that holds.
     *
     * @param season the season, with what begun work needs where it runs over
     * @param plan the plan with its cost
     */
    record Held(SeasonOfYard season, SeasonPlan plan) {
        /** The plan with a bound that was proved before, in the yard's currency, or with one that is quick. */
        SeasonAnswer answer(@Nullable Double proved) {
            long cost = plan.cost().total();
            Bound bound = proved == null
                    ? quick(cost)
                    : new Bound(
                            Math.min(cost, (long) Math.floor(proved / season.pointValue() + 1e-6)), "as proved before");
            return new SeasonAnswer(plan, bound, cost);
        }

        private Bound quick(long cost) {
            SeasonArrays a = SeasonArrays.of(season.problem());
            Bound easy = EasyBound.of(a);
            Bound flow = AssignmentBound.of(a, cost).bound();
            return flow.value() > easy.value() ? flow : easy;
        }
    }

    static KeptPlan of(SeasonOfYard season, List<Published> kept, LocalDate today) {
        List<Integer> starts = starts(season, kept);
        List<String> missing = offTheAxis(season, starts);
        if (!missing.isEmpty()) {
            return new KeptPlan(null, missing);
        }
        SeasonPlan plan = costed(season.problem(), starts);
        List<Violation> wrong = SeasonCheck.of(season.problem(), plan);
        if (wrong.isEmpty()) {
            return new KeptPlan(new Held(season, plan), List.of());
        }
        Held running = running(season, plan, today);
        return running == null
                ? new KeptPlan(null, wrong.stream().map(Violation::message).toList())
                : new KeptPlan(running, List.of());
    }

    /** Operations of the season that the plan does not know, or that no longer end within it. */
    private static List<String> offTheAxis(SeasonOfYard season, List<Integer> starts) {
        int end = season.time().axis().quarters();
        return IntStream.range(0, starts.size())
                .filter(i ->
                        starts.get(i) + season.problem().operations().get(i).lengthQ() > end)
                .mapToObj(i -> season.meanings().get(i))
                .map(m -> m.boatName() + ", " + m.operation() + " is not in it")
                .toList();
    }

    private static SeasonPlan costed(SeasonProblem problem, List<Integer> starts) {
        int[] plain = starts.stream().mapToInt(Integer::intValue).toArray();
        return Plans.of(SeasonArrays.of(problem), plain, "as kept");
    }

    /** Where work has begun the plan may rest on what begun work needs: more hands, a longer stay. */
    private static @Nullable Held running(SeasonOfYard season, SeasonPlan plan, LocalDate today) {
        try {
            int todayQ = season.time().quarterFrom(today);
            SeasonProblem running = new Replanner(season.problem(), plan, todayQ, List.of()).season();
            SeasonPlan costed = costed(running, plan.startQ());
            return SeasonCheck.of(running, costed).isEmpty() ? new Held(season.with(running), costed) : null;
        } catch (Replanner.NoRoom none) {
            return null;
        }
    }

    Held orElseThrow() {
        Held there = held;
        if (there == null) {
            throw new BadInput(List.of(new Problem(
                    SeasonFolder.PLAN,
                    0,
                    "",
                    "the plan does not hold any more: "
                            + String.join("; ", wrong.subList(0, Math.min(MOST_TOLD, wrong.size()))),
                    "",
                    "Plan on from it: what has changed since is then taken into account.")));
        }
        return there;
    }

    /** Where a plan has each operation of a season; far away where it does not know it. */
    static List<Integer> starts(SeasonOfYard season, List<Published> plan) {
        Map<OperationName, Integer> at = new HashMap<>();
        plan.forEach(p -> at.put(p.name(), season.time().quarterFrom(p.date()) + p.quarter()));
        int unknown = season.time().axis().quarters();
        return season.meanings().stream()
                .map(m -> at.getOrDefault(m.name(), unknown))
                .toList();
    }
}

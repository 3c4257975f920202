package sternwright.bench.season;

import java.util.Collections;
import java.util.List;
import sternwright.season.SeasonPlan;
import sternwright.season.SeasonProblem;
import sternwright.season.arrays.Plans;
import sternwright.season.arrays.SeasonArrays;
import sternwright.season.arrays.Timetable;
import sternwright.season.check.SeasonCheck;
import sternwright.season.exact.ExactSeason;
import sternwright.season.planner.SeasonAnswer;
import sternwright.season.planner.SeasonPlanner;
import sternwright.season.sample.GeneratedSeason;
import sternwright.season.search.Budget;
import sternwright.season.search.FirstPlan;
import sternwright.season.search.ListSchedule;

/**
 * One generated season planned in three ways in one run: earliest due date (the whiteboard), one constraint model with the whiteboard's
 * plan as full hint, and this planner.
 *
 * <p>Command: {@code bench/run season [boats] [seconds] [seed] [peer seconds]}.
 */
public final class SeasonBench {
    private static final double SHARE_FOR_THE_BOUND = 0.10;

    private SeasonBench() {}

    /**
     * Runs the measurement.
     *
     * @param args boats (300), seconds for this planner (10), seed (1), seconds for the constraint model (as this planner; 0: none)
     */
    public static void main(String[] args) {
        int boats = args.length > 0 ? Integer.parseInt(args[0]) : 300;
        double seconds = args.length > 1 ? Double.parseDouble(args[1]) : 10;
        long seed = args.length > 2 ? Long.parseLong(args[2]) : 1;
        double peerSeconds = args.length > 3 ? Double.parseDouble(args[3]) : seconds;
        SeasonProblem season = GeneratedSeason.of(boats, seed);
        System.out.printf(
                "%d boats, %d visits, %d operations, seed %d, %d processors%n",
                boats,
                season.visits().size(),
                season.operations().size(),
                seed,
                Runtime.getRuntime().availableProcessors());
        firstPlan(season);
        SeasonPlan list = whiteboard(season, "whiteboard, overtime free to use");
        List<Integer> none = Collections.nCopies(season.yard().axis().weeks(), 0);
        whiteboard(season.in(season.yard().extraHands(none)), "whiteboard, no overtime");
        long peer = peerSeconds > 0
                ? constraintModel(season, list, peerSeconds)
                : list.cost().total();
        long ours = ours(season, seconds);
        System.out.printf(
                "cost of ours / whiteboard %.2f, ours / constraint model %.2f%n",
                (double) ours / list.cost().total(), (double) ours / peer);
    }

    private static void firstPlan(SeasonProblem season) {
        for (String which : List.of("first plan, cold", "first plan, warm")) {
            long began = System.nanoTime();
            SeasonArrays a = SeasonArrays.of(season);
            Timetable t = new Timetable(a, 20);
            List<Integer> out = FirstPlan.fill(t, 1);
            double took = (System.nanoTime() - began) / 1e9;
            if (out.isEmpty()) {
                print(which, took, judged(season, Plans.of(a, t.start, which)));
            }
        }
    }

    private static SeasonPlan whiteboard(SeasonProblem season, String name) {
        long began = System.nanoTime();
        SeasonArrays a = SeasonArrays.of(season);
        Timetable t = new Timetable(a, 0);
        boolean whole = ListSchedule.fill(t);
        double took = (System.nanoTime() - began) / 1e9;
        if (!whole) {
            System.out.printf("%-36s %6.2f s  boats left without a slot%n", name, took);
            FirstPlan.fill(t, 1);
        }
        SeasonPlan plan = judged(season, Plans.of(a, t.start, name));
        print(name, took, plan);
        return plan;
    }

    private static long constraintModel(SeasonProblem season, SeasonPlan hint, double seconds) {
        SeasonArrays a = SeasonArrays.of(season);
        long began = System.nanoTime();
        ExactSeason exact = new ExactSeason(a);
        boolean[] first = {true};
        ExactSeason.Answer answer = exact.best(hint, seconds, 2, (cost, bound) -> {
            if (first[0]) {
                System.out.printf("  constraint model: first plan after %.1f s%n", (System.nanoTime() - began) / 1e9);
                first[0] = false;
            }
        });
        double took = (System.nanoTime() - began) / 1e9;
        if (answer.starts().isEmpty()) {
            System.out.printf("%-36s %6.2f s  no plan found%n", "one constraint model, full hint", took);
            return hint.cost().total();
        }
        SeasonPlan plan = judged(season, exact.plan(answer));
        print("one constraint model, full hint", took, plan);
        System.out.printf("  its bound %.0f%n", answer.bound());
        return plan.cost().total();
    }

    private static long ours(SeasonProblem season, double seconds) {
        double[] next = {0.1};
        long began = System.nanoTime();
        SeasonAnswer answer = SeasonPlanner.plan(
                season,
                Budget.seconds(seconds, System::nanoTime),
                7,
                SeasonPlanner.BoundPace.share(SHARE_FOR_THE_BOUND, System::nanoTime),
                (spent, cost, bound) -> {
                    if (spent >= next[0] - 1e-9) {
                        System.out.printf(
                                "  %5.1f s: %d, bound %d, gap %.1f %%%n",
                                (System.nanoTime() - began) / 1e9, cost, bound.value(), 100 * bound.gap(cost));
                        next[0] += 0.1;
                    }
                    return true;
                });
        print("this planner, two threads", (System.nanoTime() - began) / 1e9, answer.plan());
        System.out.printf("  bound %d, certified gap %.1f %%%n", answer.bound().value(), 100 * answer.gap());
        return answer.plan().cost().total();
    }

    private static SeasonPlan judged(SeasonProblem season, SeasonPlan plan) {
        var violations = SeasonCheck.of(season, plan);
        if (!violations.isEmpty()) {
            throw new IllegalStateException("refused by the judge: " + violations.get(0));
        }
        return plan;
    }

    private static void print(String name, double seconds, SeasonPlan plan) {
        System.out.printf("%-36s %6.2f s  %7d  %s%n", name, seconds, plan.cost().total(), plan.cost());
    }
}

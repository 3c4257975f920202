package sternwright.bench.visit;

import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import sternwright.visit.check.VisitCheck;
import sternwright.visit.problem.Proof;
import sternwright.visit.problem.VisitAnswer;
import sternwright.visit.problem.VisitPlan;
import sternwright.visit.problem.VisitProblem;
import sternwright.visit.sample.GeneratedBoats;
import sternwright.visit.sample.Habits;
import sternwright.visit.solver.SolveLimits;
import sternwright.visit.solver.VisitSolver;

/**
 * Generated boats over 36 months: time to the first plan, to a proven gap of 1 % and to the optimum, in processor seconds of one
 * thread; cost beside each work at its own due date and beside fixed visits in October and April.
 */
public final class VisitBench {
    private final List<Double> first = new ArrayList<>();
    private final List<Double> nearly = new ArrayList<>();
    private final List<Double> proven = new ArrayList<>();
    private final List<Double> overOwn = new ArrayList<>();
    private final List<Double> overHabit = new ArrayList<>();
    private int dearer;
    private int refused;
    private int wrong;

    private VisitBench() {}

    /** Runs it: works per boat, boats, seconds for the proof. */
    public static void main(String[] args) {
        int works = args.length > 0 ? Integer.parseInt(args[0]) : 60;
        int boats = args.length > 1 ? Integer.parseInt(args[1]) : 20;
        double seconds = args.length > 2 ? Double.parseDouble(args[2]) : 20;
        VisitBench bench = new VisitBench();
        for (int r = 0; r < boats; r++) {
            bench.boat(GeneratedBoats.boat(works, 1000L * works + r), seconds);
        }
        bench.print(works, boats, seconds);
    }

    private static long cpu() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    private static SolveLimits limits(double seconds) {
        return SolveLimits.ofSeconds(VisitBench::cpu, seconds);
    }

    private void boat(VisitProblem boat, double seconds) {
        long t0 = cpu();
        VisitAnswer quick = VisitSolver.first(boat, limits(seconds));
        long t1 = cpu();
        if (!(quick instanceof VisitPlan)) {
            refused++;
            return;
        }
        first.add((t1 - t0) / 1e9);
        VisitPlan near = plan(VisitSolver.solve(boat, limits(seconds).withGap(0.01)));
        nearly.add(near.gap() <= 0.01 ? near.proof().millis() / 1e3 : Double.POSITIVE_INFINITY);
        VisitPlan best = plan(VisitSolver.solve(boat, limits(seconds)));
        boolean done = best.proof().status() == Proof.Status.OPTIMAL;
        proven.add(done ? best.proof().millis() / 1e3 : Double.POSITIVE_INFINITY);
        wrong += VisitCheck.violations(boat, best).size();
        long own = plan(VisitSolver.solve(Habits.ownDueDates(boat), limits(seconds)))
                .cost()
                .total();
        long habit = plan(VisitSolver.solve(Habits.octoberAndApril(boat), limits(seconds)))
                .cost()
                .total();
        overOwn.add(1 - best.cost().total() / (double) own);
        overHabit.add(1 - best.cost().total() / (double) habit);
        dearer += best.cost().total() > Math.min(own, habit) ? 1 : 0;
    }

    private static VisitPlan plan(VisitAnswer answer) {
        if (answer instanceof VisitPlan plan) {
            return plan;
        }
        throw new IllegalStateException("a boat that had a plan is refused: " + answer);
    }

    private static double share(List<Double> values, double share) {
        List<Double> sorted = new ArrayList<>(values);
        Collections.sort(sorted);
        int i = (int) Math.ceil(share * sorted.size()) - 1;
        return sorted.isEmpty() ? Double.NaN : sorted.get(Math.max(0, i));
    }

    private void print(int works, int boats, double seconds) {
        System.out.printf(
                "%d boats of %d works, 36 months; %.0f s allowed, processor seconds of one thread%n",
                boats, works, seconds);
        System.out.printf("%-34s %8s %8s %8s%n", "", "median", "95 %", "worst");
        line("first plan, s (the first one cold)", first);
        line("proven within 1 %, s", nearly);
        line("proven optimal, s", proven);
        System.out.printf("saved against own due dates: median %.1f %%%n", 100 * share(overOwn, 0.5));
        System.out.printf(
                "saved against October and April: median %.1f %%, least %.1f %%%n",
                100 * share(overHabit, 0.5), 100 * share(overHabit, 0.0));
        System.out.printf("dearer than either: %d; refused: %d; rules broken: %d%n", dearer, refused, wrong);
    }

    private static void line(String what, List<Double> values) {
        System.out.printf("%-34s %8.3f %8.3f %8.3f%n", what, share(values, 0.5), share(values, 0.95), share(values, 1));
    }
}

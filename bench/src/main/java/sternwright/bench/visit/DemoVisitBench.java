package sternwright.bench.visit;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import sternwright.app.demo.InventedFolder;
import sternwright.app.desk.visits.AshoreSince;
import sternwright.app.desk.visits.PlanVisits;
import sternwright.app.files.YardFiles;
import sternwright.app.files.YardFolder;
import sternwright.app.files.shelf.FolderShelf;
import sternwright.boat.Boat;
import sternwright.visit.BoatAnswer;
import sternwright.visit.BoatPlan;
import sternwright.visit.check.VisitCheck;
import sternwright.visit.problem.VisitAnswer;
import sternwright.visit.problem.VisitPlan;
import sternwright.visit.problem.VisitProblem;
import sternwright.visit.sample.Habits;
import sternwright.visit.solver.SolveLimits;
import sternwright.visit.solver.VisitSolver;

/**
 * The visits of all boats of the demo yard over 24 months, proven within 1 %: time by the clock on all processors, beside each
 * work at its own due date and fixed visits in October and April.
 */
public final class DemoVisitBench {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 27);
    private static final double GAP = 0.01;
    private static final double HABIT_SECONDS = 2;
    private static final int HARDEST = 5;

    private DemoVisitBench() {}

    /** Runs it: boats, months, most seconds a boat; 60, 24, 25 if left out. */
    public static void main(String[] args) throws IOException {
        int boats = args.length > 0 ? Integer.parseInt(args[0]) : 60;
        int months = args.length > 1 ? Integer.parseInt(args[1]) : 24;
        double seconds = args.length > 2 ? Double.parseDouble(args[2]) : 25;
        Path folder = Files.createTempDirectory("demo-visits");
        new InventedFolder(InventedFolder.Where.NORTH).write(folder, boats, TODAY, 1);
        System.gc();
        long began = System.nanoTime();
        long cpu = cpu();
        YardFiles files = YardFolder.all(folder, TODAY);
        Map<String, LocalDate> ashore = AshoreSince.of(new FolderShelf(folder));
        PlanVisits planning = new PlanVisits(files, ashore, Locale.UK);
        List<BoatAnswer> answers = planning.all(
                TODAY, months, SolveLimits.ofSeconds(System::nanoTime, seconds).withGap(GAP));
        double wall = (System.nanoTime() - began) / 1e9;
        double work = (cpu() - cpu) / 1e9;
        List<BoatPlan> plans = answers.stream()
                .filter(BoatPlan.class::isInstance)
                .map(BoatPlan.class::cast)
                .toList();
        say("%d boats, %d months: %.1f s by the clock, %.1f processor seconds", boats, months, wall, work);
        proven(planning, files, plans, months);
        habits(planning, files, plans, months);
    }

    private static void proven(PlanVisits planning, YardFiles files, List<BoatPlan> plans, int months) {
        say(
                "planned %d, proven within 1 %% %d, rules broken %d",
                plans.size(),
                plans.stream().filter(p -> p.gap() <= GAP).count(),
                plans.stream()
                        .mapToLong(p -> VisitCheck.violations(
                                        planning.of(boat(files, p), TODAY, months)
                                                .problem(),
                                        p.lean())
                                .size())
                        .sum());
        plans.stream()
                .sorted(Comparator.comparingLong((BoatPlan p) -> -p.proof().millis()))
                .limit(HARDEST)
                .forEach(p -> say(
                        "  hardest: %-12s %6.2f s, gap %.2f %%, %d branches",
                        p.boatId(),
                        p.proof().millis() / 1e3,
                        100 * p.gap(),
                        p.proof().nodes()));
    }

    private static Boat boat(YardFiles files, BoatPlan plan) {
        return java.util.Objects.requireNonNull(files.boats().get(plan.boatId()));
    }

    private static void habits(PlanVisits planning, YardFiles files, List<BoatPlan> plans, int months) {
        List<Double> own = Collections.synchronizedList(new ArrayList<>());
        List<Double> habit = Collections.synchronizedList(new ArrayList<>());
        plans.parallelStream().forEach(p -> {
            VisitProblem problem = planning.of(boat(files, p), TODAY, months).problem();
            saved(p, Habits.ownDueDates(problem), own);
            saved(p, Habits.octoberAndApril(problem), habit);
        });
        told("each work at its own due date", own);
        told("October and April", habit);
    }

    private static void saved(BoatPlan plan, VisitProblem habit, List<Double> saved) {
        VisitAnswer answer = VisitSolver.solve(
                habit, SolveLimits.ofSeconds(System::nanoTime, HABIT_SECONDS).withGap(GAP));
        if (answer instanceof VisitPlan other) {
            saved.add(1 - plan.lean().cost().total() / (double) other.cost().total());
        }
    }

    private static void told(String what, List<Double> saved) {
        List<Double> sorted = new ArrayList<>(saved);
        Collections.sort(sorted);
        say(
                "against %s: %d boats, saved %.1f %% in the median, %.1f %% at least, dearer %d",
                what,
                sorted.size(),
                100 * sorted.get(sorted.size() / 2),
                100 * sorted.get(0),
                sorted.stream().filter(s -> s < 0).count());
    }

    private static long cpu() {
        return ManagementFactory.getPlatformMXBean(com.sun.management.OperatingSystemMXBean.class)
                .getProcessCpuTime();
    }

    private static void say(String text, Object... figures) {
        System.out.println(String.format(Locale.ROOT, text, figures));
    }
}

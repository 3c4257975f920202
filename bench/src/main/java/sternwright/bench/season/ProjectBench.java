package sternwright.bench.season;

import com.google.ortools.Loader;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.CumulativeConstraint;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearArgument;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import sternwright.season.project.Project;
import sternwright.season.project.ProjectPlan;
import sternwright.season.project.ProjectSearch;
import sternwright.season.project.PspText;
import sternwright.season.search.Budget;

/**
 * Published project-scheduling instances (PSPLIB, R. Kolisch and A. Sprecher) beside CP-SAT with two workers in the same run; per cent
 * above the best known makespan.
 *
 * <p>Command: {@code bench/run projects [set] [seconds] [folder]}; the instances are not shipped.
 */
public final class ProjectBench {
    private ProjectBench() {}

    /**
     * Runs the measurement.
     *
     * @param args set j30, j60 or j120 (j30), seconds each (5), folder ({@code ../shared/reference/psplib})
     */
    public static void main(String[] args) throws IOException {
        String set = args.length > 0 ? args[0] : "j30";
        double seconds = args.length > 1 ? Double.parseDouble(args[1]) : 5;
        Path folder = Path.of(args.length > 2 ? args[2] : "../shared/reference/psplib");
        if (!Files.isDirectory(folder)) {
            System.err.println(
                    "no folder " + folder + ": give the one with the .sm files and bk_ lists as third argument");
            System.exit(2);
        }
        Map<String, Integer> best = bestKnown(folder.resolve("bk_" + set + "hrs.txt"));
        double ours = 0;
        double peer = 0;
        int count = 0;
        for (Path file : files(folder, set)) {
            String name = file.getFileName().toString().replace(".sm", "").substring(set.length());
            int known = best.getOrDefault(name, 0);
            Project project = PspText.parse(Files.readString(file));
            ProjectPlan plan = ProjectSearch.of(project, Budget.seconds(seconds, System::nanoTime), 1, 2);
            int exact = constraintModel(project, seconds);
            double above = 100.0 * (plan.makespan() - known) / known;
            double peerAbove = 100.0 * (exact - known) / known;
            System.out.printf(
                    "%s%s best known %d, bound %d: ours %d (%.2f %%, %d schedules), CP-SAT %d (%.2f %%)%n",
                    set, name, known, plan.bound(), plan.makespan(), above, plan.schedules(), exact, peerAbove);
            ours += above;
            peer += peerAbove;
            count++;
        }
        System.out.printf(
                "%s, %d instances, %.0f s each: ours %.2f %% above best known, CP-SAT %.2f %%%n",
                set, count, seconds, ours / count, peer / count);
    }

    private static List<Path> files(Path folder, String set) throws IOException {
        try (Stream<Path> list = Files.list(folder)) {
            return list.filter(p -> p.getFileName().toString().matches(set + "\\d+_\\d+\\.sm"))
                    .sorted()
                    .toList();
        }
    }

    private static Map<String, Integer> bestKnown(Path list) throws IOException {
        Map<String, Integer> best = new HashMap<>();
        for (String line : Files.readAllLines(list)) {
            String[] words = line.strip().split("\\s+");
            if (words.length >= 3 && Stream.of(words).limit(3).allMatch(w -> w.matches("\\d+"))) {
                best.put(words[0] + "_" + words[1], Integer.parseInt(words[2]));
            }
        }
        return best;
    }

    private static int constraintModel(Project project, double seconds) {
        Loader.loadNativeLibraries();
        CpModel cp = new CpModel();
        int horizon = project.activities().stream()
                .mapToInt(Project.Activity::duration)
                .sum();
        List<IntVar> starts = new ArrayList<>();
        List<CumulativeConstraint> limits = new ArrayList<>();
        project.capacities().forEach(c -> limits.add(cp.addCumulative(c)));
        IntVar end = cp.newIntVar(0, horizon, "end");
        for (Project.Activity activity : project.activities()) {
            IntVar start = cp.newIntVar(0, horizon, "s");
            var interval = cp.newFixedSizeIntervalVar(start, activity.duration(), "i");
            for (int r = 0; r < limits.size(); r++) {
                if (activity.demands().get(r) > 0) {
                    limits.get(r).addDemand(interval, activity.demands().get(r));
                }
            }
            for (int before : activity.after()) {
                LinearArgument ready = com.google.ortools.sat.LinearExpr.newBuilder()
                        .add(starts.get(before))
                        .add(project.activities().get(before).duration())
                        .build();
                cp.addGreaterOrEqual(start, ready);
            }
            cp.addGreaterOrEqual(
                    end,
                    com.google.ortools.sat.LinearExpr.newBuilder()
                            .add(start)
                            .add(activity.duration())
                            .build());
            starts.add(start);
        }
        cp.minimize(end);
        CpSolver solver = new CpSolver();
        solver.getParameters().setMaxTimeInSeconds(seconds).setNumWorkers(2);
        CpSolverStatus status = solver.solve(cp);
        boolean found = status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE;
        return found ? (int) solver.value(end) : horizon;
    }
}

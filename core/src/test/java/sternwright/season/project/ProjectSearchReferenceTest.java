package sternwright.season.project;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import sternwright.season.search.Budget;

/**
 * Published single-project instances with 30 activities and their optimal makespans (PSPLIB: R. Kolisch, A. Sprecher, Eur. J.
 * Oper. Res. 96, 1997, 205-216; optima: E. Demeulemeester, W. Herroelen, 1995, list j30opt). They are not shipped: the test reads
 * the folder named by the system property {@code psplib}, and is skipped where it is missing.
 */
class ProjectSearchReferenceTest {
    private static final Path FOLDER = Path.of(System.getProperty("psplib", "../../shared/reference/psplib"));

    @Test
    void thirtyActivitiesAreScheduledAtBestAndNeverBelow() {
        Assumptions.assumeTrue(Files.isDirectory(FOLDER), "the published instances are not at " + FOLDER);
        Map<String, Integer> optimum = optima();
        List<Path> files = files();
        assertTrue(files.size() >= 5, "only " + files.size() + " instances in " + FOLDER);
        int met = 0;
        for (Path file : files) {
            String name = file.getFileName().toString().substring(3).replace(".sm", "");
            int best = java.util.Objects.requireNonNull(optimum.get(name), name);
            Project project = PspText.parse(read(file));
            ProjectPlan plan = ProjectSearch.of(project, Budget.iterations(6000), 1, 1);
            assertTrue(plan.makespan() >= best, name + " beats a proven optimum: the schedule is wrong");
            assertTrue(plan.bound() <= best, name + ": bound above the optimum");
            assertTrue(plan.makespan() <= 1.04 * best, name + " " + plan.makespan());
            feasible(project, plan);
            met += plan.makespan() == best ? 1 : 0;
        }
        assertTrue(met >= files.size() * 3 / 4, met + " of " + files.size() + " optimal");
    }

    @Test
    void aSmallProjectByHand() {
        Project.Activity one = new Project.Activity(3, List.of(2), List.of());
        Project.Activity two = new Project.Activity(2, List.of(2), List.of());
        Project.Activity three = new Project.Activity(4, List.of(1), List.of(0));
        Project project = new Project(List.of(one, two, three), List.of(3));
        ProjectPlan plan = ProjectSearch.of(project, Budget.iterations(50), 1, 2);
        feasible(project, plan);
        assertEquals(7, plan.makespan(), "one, then three beside two");
        assertTrue(plan.optimal());
    }

    @Test
    void refusesWhatCanNeverBeScheduled() {
        Project.Activity big = new Project.Activity(3, List.of(4), List.of());
        assertThrows(IllegalArgumentException.class, () -> new Project(List.of(big), List.of(3)));
        assertThrows(IllegalArgumentException.class, () -> PspText.parse("no project"));
    }

    private static void feasible(Project project, ProjectPlan plan) {
        for (int i = 0; i < plan.starts().size(); i++) {
            for (int before : project.activities().get(i).after()) {
                assertTrue(plan.starts().get(before)
                                + project.activities().get(before).duration()
                        <= plan.starts().get(i));
            }
        }
        for (int t = 0; t < plan.makespan(); t++) {
            for (int r = 0; r < project.capacities().size(); r++) {
                int used = 0;
                for (int i = 0; i < plan.starts().size(); i++) {
                    int start = plan.starts().get(i);
                    Project.Activity a = project.activities().get(i);
                    used += start <= t && t < start + a.duration() ? a.demands().get(r) : 0;
                }
                assertTrue(used <= project.capacities().get(r));
            }
        }
    }

    private static Map<String, Integer> optima() {
        Map<String, Integer> optima = new HashMap<>();
        for (String line : read(FOLDER.resolve("bk_j30opt.txt")).lines().toList()) {
            String[] words = line.strip().split("\\s+");
            if (words.length >= 3 && Stream.of(words).limit(3).allMatch(w -> w.matches("\\d+"))) {
                optima.put(words[0] + "_" + words[1], Integer.parseInt(words[2]));
            }
        }
        return optima;
    }

    private static List<Path> files() {
        try (Stream<Path> list = Files.list(FOLDER)) {
            return list.filter(p -> p.getFileName().toString().matches("j30\\d+_\\d+\\.sm"))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

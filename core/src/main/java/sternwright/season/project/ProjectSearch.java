package sternwright.season.project;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.CompletableFuture;
import java.util.stream.IntStream;
import sternwright.season.search.Budget;

/** Searches for a short schedule of a project, in as many populations as threads. */
public final class ProjectSearch {
    private static final int STEPS_BETWEEN_LOOKS = 32;

    private ProjectSearch() {}

    /**
     * The shortest schedule found.
     *
     * @param budget iterations count one child each; the search ends early when the bound is met
     * @param seed seed of all random draws; with one budget of iterations the result is the same everywhere
     * @param threads populations searched side by side, at least 1
     */
    public static ProjectPlan of(Project project, Budget budget, long seed, int threads) {
        ProjectArrays p = new ProjectArrays(project);
        SplittableRandom random = new SplittableRandom(seed);
        List<Population> populations = IntStream.range(0, threads)
                .mapToObj(t -> new Population(p, random.split()))
                .toList();
        int rounds = 10;
        for (int round = 1; round <= rounds && best(populations).best() > p.bound; round++) {
            double until = (double) round / rounds;
            List<CompletableFuture<Void>> others = populations.stream()
                    .skip(1)
                    .map(x -> CompletableFuture.runAsync(() -> run(x, budget, until, p.bound)))
                    .toList();
            run(populations.get(0), budget, until, p.bound);
            others.forEach(CompletableFuture::join);
            Population leader = best(populations);
            populations.forEach(x -> x.takeIn(leader.bestList(), leader.best()));
        }
        return plan(p, populations);
    }

    private static void run(Population population, Budget budget, double until, int bound) {
        population.found(budget, bound);
        while (population.best() > bound && budget.spent(population.children()) < until) {
            for (int step = 0; step < STEPS_BETWEEN_LOOKS; step++) {
                population.step();
            }
        }
    }

    private static Population best(List<Population> populations) {
        return populations.stream()
                .min(java.util.Comparator.comparingInt(Population::best))
                .orElseThrow();
    }

    private static ProjectPlan plan(ProjectArrays p, List<Population> populations) {
        int[] list = best(populations).bestList();
        int[] end = new int[p.n];
        int makespan = new SerialScheme(p).forwards(list, end);
        List<Integer> starts = Arrays.stream(
                        IntStream.range(0, p.n).map(i -> end[i] - p.duration[i]).toArray())
                .boxed()
                .toList();
        long schedules = populations.stream().mapToLong(Population::schedules).sum();
        return new ProjectPlan(starts, makespan, p.bound, schedules);
    }
}

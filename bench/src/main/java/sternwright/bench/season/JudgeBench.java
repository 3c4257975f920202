package sternwright.bench.season;

import java.util.List;
import sternwright.season.SeasonPlan;
import sternwright.season.SeasonProblem;
import sternwright.season.arrays.Plans;
import sternwright.season.arrays.SeasonArrays;
import sternwright.season.arrays.Timetable;
import sternwright.season.check.SeasonCheck;
import sternwright.season.exact.ExactSeason;
import sternwright.season.sample.RandomSeason;
import sternwright.season.search.Budget;
import sternwright.season.search.FirstPlan;
import sternwright.season.search.SeasonSearch;
import sternwright.season.search.Watch;

/**
 * The judge on thousands of random seasons with every feature of the model: the first plan and a searched plan of each must pass.
 *
 * <p>Command: {@code bench/run season-judge [seasons]}.
 */
public final class JudgeBench {
    private static final double SECONDS_EXACTLY = 10;

    private JudgeBench() {}

    /**
     * Runs the measurement; ends with status 1 if the judge refuses a plan.
     *
     * @param args number of seasons (10,000)
     */
    public static void main(String[] args) {
        int seasons = args.length > 0 ? Integer.parseInt(args[0]) : 10_000;
        int planned = 0;
        int refused = 0;
        int exactly = 0;
        int impossible = 0;
        long began = System.nanoTime();
        for (int seed = 0; seed < seasons; seed++) {
            SeasonProblem season = RandomSeason.of(3 + seed % 17, 4 + seed % 7, seed);
            SeasonArrays a = SeasonArrays.of(season);
            Timetable t = new Timetable(a, 20);
            if (!FirstPlan.fill(t, seed).isEmpty()) {
                ExactSeason exact = new ExactSeason(a);
                ExactSeason.Answer answer = exact.feasible(SECONDS_EXACTLY, 2);
                impossible += answer.outcome() == ExactSeason.Outcome.NONE ? 1 : 0;
                if (!answer.starts().isEmpty()) {
                    exactly++;
                    refused += refused(season, exact.plan(answer), seed);
                }
                continue;
            }
            planned++;
            refused += refused(season, Plans.of(a, t.start, "first"), seed);
            int[] starts = new SeasonSearch(a, SeasonSearch.Settings.fresh(seed))
                    .improve(t.start, Budget.iterations(200), Watch.SILENT);
            refused += refused(season, Plans.of(a, starts, "searched"), seed);
        }
        System.out.printf(
                "%d random seasons: %d planned twice each, %d by the exact solver, %d proved impossible, %d undecided; %d plans refused, %.1f s%n",
                seasons,
                planned,
                exactly,
                impossible,
                seasons - planned - exactly - impossible,
                refused,
                (System.nanoTime() - began) / 1e9);
        if (refused > 0) {
            System.exit(1);
        }
    }

    private static int refused(SeasonProblem season, SeasonPlan plan, long seed) {
        List<?> violations = SeasonCheck.of(season, plan);
        if (!violations.isEmpty()) {
            System.out.println("seed " + seed + ": " + violations.get(0));
        }
        return violations.isEmpty() ? 0 : 1;
    }
}

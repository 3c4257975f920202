package sternwright.season.search;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.CompletableFuture;
import sternwright.season.arrays.SeasonArrays;
import sternwright.season.arrays.Timetable;

/**
 * Ruin and recreate over the whole season: in every round the season is cut into two sides and each is searched in its own thread.
 *
 * <p>With a budget of iterations the result depends on nothing but the season, the seed and the settings.
 */
public final class SeasonSearch {
    private static final int CUTS_TRIED = 4;
    private static final long ROUND_NANOS = 400_000_000L;

    private final SeasonArrays a;
    private final Settings settings;
    private final SplittableRandom random;

    /**
     * How the search is run.
     *
     * @param seed seed of its random draws
     * @param threads 1 or 2
     * @param hot temperature at the beginning, in points: about the loss that one move may bring
     * @param cold temperature at the end, in points
     * @param chargePercent weight of the guide charge, see {@link Timetable}
     */
    public record Settings(long seed, int threads, double hot, double cold, int chargePercent) {
        /** For a season planned from nothing. */
        public static Settings fresh(long seed) {
            return new Settings(seed, 2, 5, 0.1, 200);
        }

        /** For a plan that is good already: begins cold, so that it can only get better. */
        public static Settings polish(long seed) {
            return new Settings(seed, 2, 1, 0.1, 200);
        }
    }

    /** A search of the season {@code a}. */
    public SeasonSearch(SeasonArrays a, Settings settings) {
        this.a = a;
        this.settings = settings;
        random = new SplittableRandom(settings.seed);
    }

    /**
     * Starts of a plan at least as good as {@code first}.
     *
     * @param first starts of a whole, feasible plan
     * @param budget how long
     * @param watch is shown the progress
     */
    public int[] improve(int[] first, Budget budget, Watch watch) {
        List<Annealing> searches = new ArrayList<>();
        for (int thread = 0; thread < settings.threads; thread++) {
            Timetable t = new Timetable(a, settings.chargePercent);
            t.set(first);
            searches.add(new Annealing(t, random.split(), settings.hot, settings.cold));
        }
        Timetable judge = new Timetable(a, 0);
        judge.set(first);
        int[] current = first.clone();
        int[] best = first.clone();
        long bestPoints = judge.points();
        int rounds = budget.rounds(ROUND_NANOS);
        for (int round = 1; round <= rounds; round++) {
            double until = (double) round / rounds;
            List<boolean[]> moved = runRound(searches, current, budget, until);
            int[] candidate = merge(searches.stream().map(Annealing::best).toList(), moved, current);
            judge.set(candidate);
            if (judge.points() < bestPoints) {
                bestPoints = judge.points();
                best = candidate;
                watch.better(best);
            }
            current = merge(searches.stream().map(Annealing::current).toList(), moved, current);
            if (!watch.goOn(until, bestPoints)) {
                break;
            }
        }
        return best;
    }

    /** Runs every search on its own side; returns the operations each was free to move. */
    private List<boolean[]> runRound(List<Annealing> searches, int[] current, Budget budget, double until) {
        searches.forEach(s -> s.startFrom(current));
        if (searches.size() == 1) {
            boolean[] all = new boolean[a.n];
            for (int i = 0; i < a.n; i++) {
                all[i] = a.earliest[i] < a.latest[i];
            }
            searches.get(0).side(0, a.quarters, all);
            searches.get(0).run(budget, until);
            return List.of(all);
        }
        Sides sides = cut(current);
        searches.get(0).side(0, sides.cut, sides.before);
        searches.get(1).side(sides.cut, a.quarters, sides.after);
        CompletableFuture<Void> second =
                CompletableFuture.runAsync(() -> searches.get(1).run(budget, until));
        searches.get(0).run(budget, until);
        second.join();
        return List.of(sides.before, sides.after);
    }

    /** Of a few random weeks the one that leaves most to move on both sides. */
    private Sides cut(int[] current) {
        int weeks = a.extraHands.length;
        Sides best = new Sides(a, current, weeks / 2 * a.quartersPerWeek);
        for (int tries = 0; tries < CUTS_TRIED; tries++) {
            Sides other = new Sides(a, current, (1 + random.nextInt(Math.max(1, weeks - 1))) * a.quartersPerWeek);
            if (tries == 0 || other.smaller() > best.smaller()) {
                best = other;
            }
        }
        return best;
    }

    private static int[] merge(List<int[]> starts, List<boolean[]> moved, int[] current) {
        int[] merged = current.clone();
        for (int side = 0; side < starts.size(); side++) {
            for (int i = 0; i < merged.length; i++) {
                if (moved.get(side)[i]) {
                    merged[i] = starts.get(side)[i];
                }
            }
        }
        return merged;
    }
}

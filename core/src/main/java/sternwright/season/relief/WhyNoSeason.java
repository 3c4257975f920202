package sternwright.season.relief;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import sternwright.season.SeasonProblem;
import sternwright.season.arrays.SeasonArrays;
import sternwright.season.arrays.Timetable;
import sternwright.season.exact.ExactSeason;
import sternwright.season.search.FirstPlan;

/** Finds the smallest set of visits that clash, and what would be enough. */
public final class WhyNoSeason {
    private static final int ATTEMPTS = 5;
    private static final int MOST_VISITS_PROVED = 60;

    private final SeasonProblem problem;
    private final long seed;
    private final double proofSeconds;

    private WhyNoSeason(SeasonProblem problem, long seed, double proofSeconds) {
        this.problem = problem;
        this.seed = seed;
        this.proofSeconds = proofSeconds;
    }

    /**
     * Why {@code problem} can't be planned.
     *
     * @param without operations that the first plan found no room for, at least one
     * @param proofSeconds time the exact solver may take for each question it is asked; 0 asks it nothing
     */
    public static NoSeason of(SeasonProblem problem, List<Integer> without, long seed, double proofSeconds) {
        return of(problem, without, false, seed, proofSeconds);
    }

    /** The same; with {@code frost} the last dates are those of the frost, which nobody can put off. */
    static NoSeason of(SeasonProblem problem, List<Integer> without, boolean frost, long seed, double proofSeconds) {
        WhyNoSeason why = new WhyNoSeason(problem, seed, proofSeconds);
        List<Integer> clash = why.clash(without);
        boolean proved = why.proved(clash);
        List<NoSeason.Relief> reliefs = new Reliefs(problem, clash, frost, why::planned).all();
        int from = clash.stream().mapToInt(v -> why.window(v)[0]).min().orElse(0);
        int end = clash.stream().mapToInt(v -> why.window(v)[1]).max().orElse(1);
        return new NoSeason(clash, why.sentence(clash), from, end, proved, reliefs);
    }

    private boolean planned(SeasonProblem season) {
        SeasonArrays a = SeasonArrays.of(season);
        return FirstPlan.fill(new Timetable(a, 0), seed, ATTEMPTS).isEmpty()
                || season.visits().size() <= MOST_VISITS_PROVED && found(outcome(a));
    }

    private ExactSeason.Outcome outcome(SeasonArrays a) {
        return proofSeconds > 0 ? new ExactSeason(a).feasible(proofSeconds, 2).outcome() : ExactSeason.Outcome.UNKNOWN;
    }

    private static boolean found(ExactSeason.Outcome outcome) {
        return outcome == ExactSeason.Outcome.FOUND || outcome == ExactSeason.Outcome.OPTIMAL;
    }

    private boolean planned(Set<Integer> visits) {
        return planned(PartOfSeason.of(problem, visits));
    }

    /** Grows the set of visits around one without room until it clashes, then leaves out all that can be left out. */
    private List<Integer> clash(List<Integer> without) {
        int visit = visitOf(without.get(0));
        List<Integer> near = IntStream.range(0, problem.visits().size())
                .boxed()
                .filter(v -> v != visit)
                .sorted(Comparator.comparingInt(v -> distance(visit, v)))
                .toList();
        Set<Integer> set = new LinkedHashSet<>(Set.of(visit));
        int taken = 0;
        for (int step = 1; planned(set) && taken < near.size(); step *= 2) {
            int end = Math.min(near.size(), taken + step);
            set.addAll(near.subList(taken, end));
            taken = end;
        }
        return leaveOut(set, new ArrayList<>(near.subList(0, taken)));
    }

    private List<Integer> leaveOut(Set<Integer> clashing, List<Integer> others) {
        Set<Integer> set = new HashSet<>(clashing);
        int block = Math.max(1, others.size() / 2);
        List<Integer> left = new ArrayList<>(others);
        while (!left.isEmpty()) {
            for (int from = 0; from < left.size(); ) {
                List<Integer> part = List.copyOf(left.subList(from, Math.min(left.size(), from + block)));
                Set<Integer> smaller = new HashSet<>(set);
                part.forEach(smaller::remove);
                if (planned(smaller)) {
                    from += block;
                } else {
                    set = smaller;
                    left.removeAll(part);
                }
            }
            if (block == 1) {
                break;
            }
            block = Math.max(1, block / 2);
        }
        return new ArrayList<>(new TreeSet<>(set));
    }

    private int visitOf(int operation) {
        return problem.halves().get(problem.operations().get(operation).half()).visit();
    }

    /** How far apart two visits' windows lie, 0 if they meet; the wider one comes later. */
    private int distance(int one, int two) {
        int[] first = window(one);
        int[] second = window(two);
        int gap = Math.max(0, Math.max(second[0] - first[1], first[0] - second[1]));
        return 4 * gap + (second[1] - second[0]);
    }

    private int[] window(int visit) {
        int from = Integer.MAX_VALUE / 8;
        int to = 0;
        for (int i = 0; i < problem.operations().size(); i++) {
            if (visitOf(i) == visit) {
                from = Math.min(from, problem.operations().get(i).earliestQ());
                to = Math.max(to, problem.operations().get(i).latestEndQ());
            }
        }
        return new int[] {from, to};
    }

    private boolean proved(List<Integer> clash) {
        SeasonArrays part = SeasonArrays.of(PartOfSeason.of(problem, Set.copyOf(clash)));
        return clash.size() <= MOST_VISITS_PROVED && outcome(part) == ExactSeason.Outcome.NONE;
    }

    private String sentence(List<Integer> clash) {
        String boats = clash.stream()
                .limit(12)
                .map(v -> problem.visits().get(v).boat() + " ("
                        + problem.visits().get(v).name() + ")")
                .collect(Collectors.joining(", "));
        String more = clash.size() > 12 ? " and " + (clash.size() - 12) + " more" : "";
        return clash.size() == 1
                ? boats + " can't be served within its own dates, even if it were the only boat"
                : boats + more + " can't all be served within their dates";
    }
}

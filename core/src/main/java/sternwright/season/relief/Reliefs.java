package sternwright.season.relief;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.IntFunction;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import sternwright.season.Operation;
import sternwright.season.SeasonProblem;
import sternwright.season.relief.NoSeason.Relief;

/** Tries what a yard would try, each by planning the whole season with it. */
final class Reliefs {
    private static final int MOST_EXTRA_HANDS = 6;
    private static final int MOST_WEEKS = 3;

    /** So many more of a thing are tried at most. */
    private static final int MOST_MORE = 8;

    private final SeasonProblem problem;
    private final List<Integer> clash;
    private final Predicate<SeasonProblem> planned;

    Reliefs(SeasonProblem problem, List<Integer> clash, Predicate<SeasonProblem> planned) {
        this.problem = problem;
        this.clash = clash;
        this.planned = planned;
    }

    List<Relief> all() {
        List<Relief> reliefs = new ArrayList<>();
        reliefs.add(overtime());
        reliefs.addAll(anotherWeek());
        reliefs.addAll(oneMore());
        reliefs.add(turnAway());
        reliefs.sort(Comparator.comparing((Relief r) -> !r.enough()).thenComparing(Relief::kind));
        return reliefs;
    }

    private boolean inClash(Operation o) {
        return clash.contains(problem.halves().get(o.half()).visit());
    }

    private Relief overtime() {
        int first = problem.operations().stream()
                .filter(this::inClash)
                .mapToInt(Operation::earliestQ)
                .min()
                .orElse(0);
        int last = problem.operations().stream()
                .filter(this::inClash)
                .mapToInt(Operation::latestEndQ)
                .max()
                .orElse(1);
        int firstWeek = problem.yard().axis().weekOf(first);
        int lastWeek = Math.min(
                problem.yard().axis().weeks() - 1, problem.yard().axis().weekOf(last - 1));
        for (int hands = 1; hands <= MOST_EXTRA_HANDS; hands++) {
            List<Integer> byWeek = new ArrayList<>(problem.yard().extraHandsByWeek());
            for (int w = firstWeek; w <= lastWeek; w++) {
                byWeek.set(w, byWeek.get(w) + hands);
            }
            if (planned.test(problem.in(problem.yard().extraHands(byWeek)))) {
                long points = (long) hands
                        * (lastWeek - firstWeek + 1)
                        * problem.weights().overtimePerHandWeek();
                return new Relief(Relief.Kind.OVERTIME, hands(hands), firstWeek, lastWeek, true, points);
            }
        }
        return new Relief(Relief.Kind.OVERTIME, hands(MOST_EXTRA_HANDS), firstWeek, lastWeek, false, 0);
    }

    private static String hands(int hands) {
        return (hands == 1 ? "one more extra hand" : hands + " more extra hands") + " on overtime or hired";
    }

    private static String weeks(int weeks) {
        return weeks == 1 ? "a week" : weeks + " weeks";
    }

    /** Dates that were given for certain, later; and a season that runs longer. */
    private List<Relief> anotherWeek() {
        int week = problem.yard().axis().quartersPerWeek();
        int end = problem.yard().axis().quarters();
        List<Relief> reliefs = new ArrayList<>();
        if (problem.operations().stream().anyMatch(o -> inClash(o) && o.latestEndQ() < end)) {
            reliefs.add(first(
                    w -> problem.operations(problem.operations().stream()
                            .map(o ->
                                    inClash(o) ? o.within(o.earliestQ(), Math.min(end, o.latestEndQ() + w * week)) : o)
                            .toList()),
                    w -> "the last dates of these visits " + weeks(w) + " later"));
        }
        if (problem.operations().stream().anyMatch(o -> inClash(o) && o.latestEndQ() == end)) {
            reliefs.add(first(w -> WithOneMore.weeks(problem, w), w -> "a season that runs " + weeks(w) + " longer"));
        }
        return reliefs;
    }

    private Relief first(IntFunction<SeasonProblem> later, IntFunction<String> words) {
        for (int weeks = 1; weeks <= MOST_WEEKS; weeks++) {
            if (planned.test(later.apply(weeks))) {
                return Relief.always(Relief.Kind.ANOTHER_WEEK, words.apply(weeks), true);
            }
        }
        return Relief.always(Relief.Kind.ANOTHER_WEEK, words.apply(MOST_WEEKS), false);
    }

    /** Of each thing the fewest more that are enough; if the most are not, fewer are not asked. */
    private List<Relief> oneMore() {
        List<List<WithOneMore.Wider>> more = IntStream.rangeClosed(1, MOST_MORE)
                .mapToObj(m -> WithOneMore.ofEverything(problem, m))
                .toList();
        List<Relief> reliefs = new ArrayList<>();
        for (int thing = 0; thing < more.get(0).size(); thing++) {
            int at = thing;
            WithOneMore.Wider most = more.get(MOST_MORE - 1).get(at);
            if (!planned.test(most.season())) {
                reliefs.add(Relief.always(Relief.Kind.ONE_MORE, most.what(), false));
                continue;
            }
            WithOneMore.Wider fewest = more.stream()
                    .limit(MOST_MORE - 1L)
                    .map(m -> m.get(at))
                    .filter(w -> planned.test(w.season()))
                    .findFirst()
                    .orElse(most);
            reliefs.add(Relief.always(Relief.Kind.ONE_MORE, fewest.what(), true));
        }
        return reliefs;
    }

    /** Boats of the clash with the least work first, until the others can be served. */
    private Relief turnAway() {
        Set<Integer> keep = new HashSet<>(
                IntStream.range(0, problem.visits().size()).boxed().toList());
        List<Integer> bySize =
                clash.stream().sorted(Comparator.comparingInt(this::work)).toList();
        List<String> boats = new ArrayList<>();
        for (int visit : bySize) {
            keep.remove(visit);
            boats.add(problem.visits().get(visit).boat());
            if (planned.test(PartOfSeason.of(problem, keep))) {
                return Relief.always(Relief.Kind.TURN_AWAY, "not taking " + String.join(", ", boats), true);
            }
        }
        return Relief.always(Relief.Kind.TURN_AWAY, "not taking " + String.join(", ", boats), false);
    }

    private int work(int visit) {
        return problem.operations().stream()
                .filter(o -> problem.halves().get(o.half()).visit() == visit)
                .mapToInt(o -> o.lengthQ() * Math.max(1, o.hands()))
                .sum();
    }
}

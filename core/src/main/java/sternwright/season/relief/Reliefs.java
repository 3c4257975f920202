package sternwright.season.relief;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.IntFunction;
import java.util.function.IntToLongFunction;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import sternwright.season.Due;
import sternwright.season.Operation;
import sternwright.season.Promise;
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
    private final boolean frost;
    private final Predicate<SeasonProblem> planned;

    /** Of a season whose last dates were given, or, with {@code frost}, whose last dates are those of the frost. */
    Reliefs(SeasonProblem problem, List<Integer> clash, boolean frost, Predicate<SeasonProblem> planned) {
        this.problem = problem;
        this.clash = clash;
        this.frost = frost;
        this.planned = planned;
    }

    List<Relief> all() {
        List<Relief> reliefs = new ArrayList<>();
        reliefs.add(overtime());
        reliefs.addAll(frost ? List.of(givenUpSooner()) : anotherWeek());
        reliefs.addAll(oneMore());
        reliefs.add(turnAway());
        reliefs.sort(Comparator.comparing((Relief r) -> !r.enough())
                .thenComparing(r -> r.kind() == Relief.Kind.TURN_AWAY)
                .thenComparing(r -> r.points() > 0 ? r.points() : Long.MAX_VALUE)
                .thenComparing(Relief::kind));
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
                return new Relief(Relief.Kind.OVERTIME, hands(hands), firstWeek, lastWeek, true, points, List.of());
            }
        }
        return new Relief(Relief.Kind.OVERTIME, hands(MOST_EXTRA_HANDS), firstWeek, lastWeek, false, 0, List.of());
    }

    private static String hands(int hands) {
        return (hands == 1 ? "one more extra hand" : hands + " more extra hands") + " on overtime or hired";
    }

    private String weeks(int quarters) {
        int weeks = quarters / problem.yard().axis().quartersPerWeek();
        return weeks == 1 ? "a week" : weeks + " weeks";
    }

    /** Dates that were given for certain, later; and a season that runs longer. */
    private List<Relief> anotherWeek() {
        int end = problem.yard().axis().quarters();
        List<Relief> reliefs = new ArrayList<>();
        if (problem.operations().stream().anyMatch(this::hasLastDate)) {
            Relief these = later(this::hasLastDate, "the last dates of these visits ");
            reliefs.add(these.enough() ? these : later(this::hasDateNear, "every last date given for the same days "));
        }
        if (problem.operations().stream().anyMatch(o -> inClash(o) && o.latestEndQ() == end)) {
            int week = problem.yard().axis().quartersPerWeek();
            reliefs.add(first(
                    w -> WithOneMore.weeks(problem, w / week),
                    w -> "a season that runs " + weeks(w) + " longer",
                    w -> 0));
        }
        return reliefs;
    }

    private Relief later(Predicate<Operation> which, String words) {
        int end = problem.yard().axis().quarters();
        return first(
                w -> moved(o -> which.test(o) ? o.within(o.earliestQ(), Math.min(end, o.latestEndQ() + w)) : o),
                w -> words + weeks(w) + " later",
                w -> priceOfLater(which, w));
    }

    /** The smallest clash is often one of many of the same days; then moving its own dates leaves the next one. */
    private boolean hasDateNear(Operation o) {
        int week = problem.yard().axis().quartersPerWeek();
        return !nailed(o)
                && o.latestEndQ() < problem.yard().axis().quarters()
                && problem.operations().stream()
                        .filter(this::hasLastDate)
                        .anyMatch(c -> Math.abs(c.latestEndQ() - o.latestEndQ()) <= week);
    }

    /** What protects from frost, begun sooner: that is what owners can be asked for; the frost cannot. */
    private Relief givenUpSooner() {
        int soonest = problem.operations().stream()
                .filter(o -> !nailed(o))
                .mapToInt(Operation::earliestQ)
                .min()
                .orElse(0);
        return first(
                w -> moved(o -> inClash(o) && !nailed(o)
                        ? o.within(Math.min(o.earliestQ(), Math.max(soonest, o.earliestQ() - w)), o.latestEndQ())
                        : o),
                w -> "these boats given up " + weeks(w) + " sooner",
                w -> 0);
    }

    private SeasonProblem moved(UnaryOperator<Operation> way) {
        return problem.operations(problem.operations().stream().map(way).toList());
    }

    private boolean hasLastDate(Operation o) {
        return inClash(o)
                && !nailed(o)
                && o.latestEndQ() < problem.yard().axis().quarters();
    }

    /** Work that has begun, and what was promised to the hour. */
    private static boolean nailed(Operation o) {
        return o.earliestQ() + o.lengthQ() == o.latestEndQ();
    }

    /** What it costs at most that given dates are so much later: promises moved, and work late. */
    private long priceOfLater(Predicate<Operation> which, int quarters) {
        long points = 0;
        for (int i = 0; i < problem.operations().size(); i++) {
            Operation o = problem.operations().get(i);
            if (which.test(o)) {
                int operation = i;
                points += o.due().kind() == Due.Kind.WANTED
                        ? (long) quarters * o.due().latePerQ()
                        : 0;
                points += problem.promises().stream()
                        .filter(p -> p.operation() == operation && !p.free())
                        .mapToLong(p ->
                                moved(p) + (long) quarters * problem.weights().promisePerQ())
                        .sum();
            }
        }
        return points;
    }

    private long moved(Promise promise) {
        return promise.movedCost() == Promise.USUAL ? problem.weights().promiseMoved() : promise.movedCost();
    }

    /** The fewest weeks that are enough; all three functions are given quarters. */
    private Relief first(IntFunction<SeasonProblem> with, IntFunction<String> words, IntToLongFunction price) {
        int week = problem.yard().axis().quartersPerWeek();
        for (int weeks = 1; weeks <= MOST_WEEKS; weeks++) {
            if (planned.test(with.apply(weeks * week))) {
                return new Relief(
                        Relief.Kind.ANOTHER_WEEK,
                        words.apply(weeks * week),
                        Relief.ALWAYS,
                        Relief.ALWAYS,
                        true,
                        price.applyAsLong(weeks * week),
                        List.of());
            }
        }
        return Relief.always(Relief.Kind.ANOTHER_WEEK, words.apply(MOST_WEEKS * week), false);
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
        List<Integer> away = new ArrayList<>();
        for (int visit : bySize) {
            keep.remove(visit);
            away.add(visit);
            if (planned.test(PartOfSeason.of(problem, keep))) {
                return away(away, true);
            }
        }
        return away(away, false);
    }

    private Relief away(List<Integer> visits, boolean enough) {
        String boats = visits.stream()
                .map(v -> problem.visits().get(v).boat())
                .distinct()
                .collect(Collectors.joining(", "));
        return new Relief(
                Relief.Kind.TURN_AWAY, "not taking " + boats, Relief.ALWAYS, Relief.ALWAYS, enough, 0, visits);
    }

    private int work(int visit) {
        return problem.operations().stream()
                .filter(o -> problem.halves().get(o.half()).visit() == visit)
                .mapToInt(o -> o.lengthQ() * Math.max(1, o.hands()))
                .sum();
    }
}

package sternwright.season.relief;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import sternwright.season.Operation;
import sternwright.season.PlaceClass;
import sternwright.season.SeasonProblem;
import sternwright.season.Technician;
import sternwright.season.relief.NoSeason.Relief;

/** Tries what a yard would try, each by planning the whole season with it. */
final class Reliefs {
    private static final int MOST_EXTRA_HANDS = 6;
    private static final int MOST_WEEKS = 3;

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
        reliefs.add(anotherWeek());
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
        String weeks = " more extra hands in weeks " + firstWeek + " to " + lastWeek;
        for (int hands = 1; hands <= MOST_EXTRA_HANDS; hands++) {
            List<Integer> byWeek = new ArrayList<>(problem.yard().extraHandsByWeek());
            for (int w = firstWeek; w <= lastWeek; w++) {
                byWeek.set(w, byWeek.get(w) + hands);
            }
            if (planned.test(problem.in(problem.yard().extraHands(byWeek)))) {
                long points = (long) hands
                        * (lastWeek - firstWeek + 1)
                        * problem.weights().overtimePerHandWeek();
                return new Relief(Relief.Kind.OVERTIME, hands + weeks + ", at most", true, points);
            }
        }
        return new Relief(Relief.Kind.OVERTIME, MOST_EXTRA_HANDS + weeks, false, 0);
    }

    private Relief anotherWeek() {
        int week = problem.yard().axis().quartersPerWeek();
        int end = problem.yard().axis().quarters();
        for (int weeks = 1; weeks <= MOST_WEEKS; weeks++) {
            int later = weeks * week;
            List<Operation> operations = problem.operations().stream()
                    .map(o -> inClash(o) ? o.within(o.earliestQ(), Math.min(end, o.latestEndQ() + later)) : o)
                    .toList();
            if (planned.test(problem.operations(operations))) {
                return new Relief(
                        Relief.Kind.ANOTHER_WEEK, "last dates of these visits " + weeks + " weeks later", true, 0);
            }
        }
        return new Relief(
                Relief.Kind.ANOTHER_WEEK, "last dates of these visits " + MOST_WEEKS + " weeks later", false, 0);
    }

    private List<Relief> oneMore() {
        List<Relief> reliefs = new ArrayList<>();
        for (int c = 0; c < problem.yard().placeClasses().size(); c++) {
            List<PlaceClass> places = new ArrayList<>(problem.yard().placeClasses());
            PlaceClass was = places.get(c);
            places.set(c, new PlaceClass(was.name(), was.places() + 1));
            boolean enough = planned.test(problem.in(problem.yard().places(places)));
            reliefs.add(new Relief(Relief.Kind.ONE_MORE, "one more place " + was.name(), enough, 0));
        }
        for (int skill = 0; skill < problem.yard().skills().size(); skill++) {
            List<Technician> crew = new ArrayList<>(problem.yard().technicians());
            crew.add(new Technician("one more", List.of(skill), List.of()));
            boolean enough = planned.test(problem.in(problem.yard().technicians(crew)));
            String what = "one more technician for " + problem.yard().skills().get(skill);
            reliefs.add(new Relief(Relief.Kind.ONE_MORE, what, enough, 0));
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
                return new Relief(Relief.Kind.TURN_AWAY, "not taking " + String.join(", ", boats), true, 0);
            }
        }
        return new Relief(Relief.Kind.TURN_AWAY, "not taking " + String.join(", ", boats), false, 0);
    }

    private int work(int visit) {
        return problem.operations().stream()
                .filter(o -> problem.halves().get(o.half()).visit() == visit)
                .mapToInt(o -> o.lengthQ() * Math.max(1, o.hands()))
                .sum();
    }
}

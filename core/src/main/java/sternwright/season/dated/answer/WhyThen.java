package sternwright.season.dated.answer;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import sternwright.season.Axis;
import sternwright.season.Due;
import sternwright.season.Lag;
import sternwright.season.Operation;
import sternwright.season.PlaceClass;
import sternwright.season.Promise;
import sternwright.season.SeasonPlan;
import sternwright.season.SeasonProblem;
import sternwright.season.Stay;
import sternwright.season.dated.Meaning;
import sternwright.season.dated.OperationName;
import sternwright.season.dated.PromisedDate;
import sternwright.season.dated.WorkingTime;
import sternwright.season.dated.answer.DatedOperation.State;
import sternwright.season.dated.make.SeasonOfYard;

/** Says of each operation why it is on its date, and of each moved promise why it moved. */
final class WhyThen {
    private static final String EXTRA_HAND = "an extra hand";

    private final SeasonOfYard season;
    private final SeasonProblem problem;
    private final SeasonPlan plan;
    private final Rota rota;
    private final WorkingTime time;
    private final Axis axis;
    private final Map<OperationName, PromisedDate> promised;
    private final Set<OperationName> begun;
    private final Map<Integer, List<Lag>> before = new HashMap<>();

    WhyThen(SeasonOfYard season, SeasonPlan plan, Rota rota) {
        this.season = season;
        this.plan = plan;
        this.rota = rota;
        problem = season.problem();
        time = season.time();
        axis = time.axis();
        promised =
                season.request().promises().stream().collect(Collectors.toMap(PromisedDate::name, p -> p, (a, b) -> b));
        begun = season.request().begun().stream()
                .map(PromisedDate::name)
                .collect(Collectors.toCollection(HashSet::new));
        problem.lags()
                .forEach(l -> before.computeIfAbsent(l.after(), a -> new ArrayList<>())
                        .add(l));
    }

    DatedOperation dated(int i) {
        Meaning meaning = season.meanings().get(i);
        int start = plan.startQ().get(i);
        int end = plan.endQ(problem, i);
        int lateDays = lateDays(i, end);
        State state = state(i, lateDays);
        return new DatedOperation(
                meaning,
                time.begin(start),
                time.end(end),
                start % axis.quartersPerDay(),
                people(i),
                rota.hoist(i) == Assignment.NOBODY
                        ? ""
                        : problem.yard().hoists().get(rota.hoist(i)).name(),
                state,
                lateDays,
                reason(i, state, lateDays));
    }

    private int lateDays(int i, int end) {
        Due due = problem.operations().get(i).due();
        int over = due.latePerQ() > 0 ? Math.max(0, end - due.byQ()) : 0;
        return (over + axis.quartersPerDay() - 1) / axis.quartersPerDay();
    }

    private State state(int i, int lateDays) {
        if (lateDays > 0) {
            return problem.operations().get(i).due().kind() == Due.Kind.FROST ? State.UNSAFE : State.LATE;
        }
        PromisedDate promise = promised.get(season.meanings().get(i).name());
        if (promise == null) {
            return State.IN_TIME;
        }
        return promise.date().equals(time.date(plan.startQ().get(i))) ? State.PROMISED : State.MOVED;
    }

    private List<String> people(int i) {
        if (problem.operations().get(i).skill() < 0) {
            return List.of();
        }
        return Arrays.stream(rota.people(i, false))
                .mapToObj(p -> p == Assignment.NOBODY
                        ? EXTRA_HAND
                        : problem.yard().technicians().get(p).name())
                .toList();
    }

    private String reason(int i, State state, int lateDays) {
        Meaning meaning = season.meanings().get(i);
        if (begun.contains(meaning.name())) {
            return "Already begun.";
        }
        return switch (state) {
            case UNSAFE ->
                // Days before the season are not on the axis: how many she has waited already is not known here.
                (problem.operations().get(i).due().byQ() > 0
                                ? days(lateDays) + " after the frost date (" + meaning.dueWords()
                                        + "): protect her before that day; "
                                : "The frost date is past (" + meaning.dueWords() + "): protect her at once; ")
                        + whyNotBefore(i) + ".";
            case LATE -> days(lateDays) + " late (" + meaning.dueWords() + "); " + whyNotBefore(i) + ".";
            case PROMISED -> "As promised.";
            case MOVED -> "Promised for another day; " + whyMoved(i) + ".";
            case IN_TIME -> inTime(i, meaning);
        };
    }

    private String inTime(int i, Meaning meaning) {
        Optional<String> follows = follows(i);
        if (!meaning.dueWords().isEmpty() && problem.operations().get(i).due().latePerQ() > 0) {
            return "In time: " + meaning.dueWords() + ".";
        }
        return follows.map(f -> "Right after " + f + ".").orElse("When people and hoist are free.");
    }

    private static String days(int days) {
        return days == 1 ? "1 working day" : days + " working days";
    }

    /** The operation of the same boat that ends just when this one begins. */
    private Optional<String> follows(int i) {
        return followed(i).map(f -> season.meanings().get(f).operation());
    }

    private Optional<Integer> followed(int i) {
        int start = plan.startQ().get(i);
        return before.getOrDefault(i, List.of()).stream()
                .filter(l -> plan.startQ().get(l.before()) + l.minQ() == start)
                .map(Lag::before)
                .findFirst();
    }

    /** Why a late operation is not earlier: back along the boat's own works to the one that something else holds. */
    private String whyNotBefore(int i) {
        Optional<Integer> follows = followed(i);
        if (follows.isEmpty()) {
            return "it " + held(i);
        }
        int first = follows.get();
        for (Optional<Integer> earlier = followed(first); earlier.isPresent(); earlier = followed(first)) {
            first = earlier.get();
        }
        return "it follows " + season.meanings().get(first).operation() + ", which " + held(first);
    }

    private String held(int i) {
        Operation o = problem.operations().get(i);
        int start = plan.startQ().get(i);
        if (start == o.earliestQ()) {
            return "cannot begin before " + time.date(start);
        }
        if (o.days() >= 0 && !water(o, start - axis.quartersPerDay())) {
            return "has not water enough the days before";
        }
        if (fullTheDayBefore(i, start)) {
            return "waits: " + full(o) + " until then";
        }
        Optional<Stay> stay =
                problem.stays().stream().filter(s -> s.lift() == i).findFirst();
        if (stay.isPresent() && start > 0 && noPlace(stay.get(), start - 1)) {
            return "waits: no place of "
                    + problem.yard().placeClasses().get(stay.get().placeClass()).name()
                    + " or longer is free until then";
        }
        return "would cost more elsewhere if it were earlier";
    }

    /** Whether it could have begun in no quarter of the working day before. */
    private boolean fullTheDayBefore(int i, int start) {
        int from = Math.max(problem.operations().get(i).earliestQ(), start - axis.quartersPerDay());
        return start > from && IntStream.range(from, start).noneMatch(q -> rota.couldBegin(i, q));
    }

    /** Whether one boat more of this length would have no place in a quarter, whatever place each stands on. */
    private boolean noPlace(Stay boat, int q) {
        List<PlaceClass> classes = problem.yard().placeClasses();
        return IntStream.rangeClosed(0, boat.placeClass()).anyMatch(c -> {
            long standing = problem.stays().stream()
                    .filter(s -> s.placeClass() >= c
                            && plan.startQ().get(s.lift()) <= q
                            && plan.endQ(problem, s.launch()) > q)
                    .count();
            return standing
                    >= classes.subList(c, classes.size()).stream()
                            .mapToInt(PlaceClass::places)
                            .sum();
        });
    }

    private String full(Operation o) {
        return o.liftClass() >= 0
                ? problem.yard().liftClasses().get(o.liftClass()).name() + " is full"
                : "everyone for " + problem.yard().skills().get(o.skill()) + " is busy or away";
    }

    private boolean water(Operation o, int q) {
        return q >= 0 && problem.yard().daySets().get(o.days()).days().contains(axis.dayOf(q));
    }

    private boolean down(Operation o, int day) {
        return problem.yard().liftClasses().get(o.liftClass()).hoists().stream()
                .allMatch(h -> problem.yard().hoists().get(h).downDays().contains(day));
    }

    /** Why a promise cannot or should not be kept. */
    private String whyMoved(int i) {
        @Nullable PromisedDate promise = promised.get(season.meanings().get(i).name());
        Operation o = problem.operations().get(i);
        String due = season.meanings().get(i).dueWords();
        if (promise != null && Double.valueOf(0).equals(promise.movedPrice())) {
            return due.startsWith("the owner") ? due : "its date was released";
        }
        int day = time.quarterFrom(promise == null ? time.first() : promise.date());
        int last = day + axis.quartersPerDay() - 1;
        if (o.liftClass() >= 0 && down(o, axis.dayOf(day))) {
            return problem.yard().liftClasses().get(o.liftClass()).name() + " is down on the promised day";
        }
        if (o.earliestQ() > last) {
            return "it cannot begin before " + time.date(o.earliestQ());
        }
        if (o.days() >= 0 && !water(o, day)) {
            return "there is not water enough on the promised day";
        }
        if (o.due().latePerQ() > 0
                && last + o.lengthQ() > o.due().byQ()
                && plan.startQ().get(i) < day) {
            return "it is wanted earlier: " + due;
        }
        Optional<Lag> waits = before.getOrDefault(i, List.of()).stream()
                .filter(l -> plan.startQ().get(l.before()) + l.minQ() > last)
                .findFirst();
        if (waits.isPresent()) {
            return "it waits for " + season.meanings().get(waits.get().before()).operation();
        }
        for (int q = day; q <= last; q++) {
            if (rota.couldBegin(i, q)) {
                return "moved to make room for others; nothing cheaper was found";
            }
        }
        return full(o) + " on the promised day";
    }

    /** Every promise that is not kept, and every one whose operation is gone. */
    List<MovedDate> moved() {
        List<MovedDate> moved = new ArrayList<>();
        for (int i = 0; i < season.meanings().size(); i++) {
            Meaning meaning = season.meanings().get(i);
            PromisedDate promise = promised.get(meaning.name());
            LocalDate day = time.date(plan.startQ().get(i));
            if (promise != null && !promise.date().equals(day)) {
                moved.add(moved(meaning.name(), meaning.boatName(), promise, day, movedPrice(i), whyMoved(i)));
            }
        }
        for (PromisedDate promise : season.lost()) {
            String why = "this operation is no longer planned for her";
            moved.add(moved(promise.name(), promise.name().boatId(), promise, null, 0, why));
        }
        return moved;
    }

    private double movedPrice(int i) {
        Promise promise = problem.promises().stream()
                .filter(p -> p.operation() == i)
                .reduce((a, b) -> b)
                .orElseThrow();
        if (promise.free()) {
            return 0;
        }
        int usual = problem.weights().promiseMoved();
        int moved = promise.movedCost() == Promise.USUAL ? usual : promise.movedCost();
        int apart = Math.abs(plan.startQ().get(i) - promise.startQ());
        return (moved + (double) problem.weights().promisePerQ() * apart) * season.pointValue();
    }

    private static MovedDate moved(
            OperationName name, String boat, PromisedDate promise, @Nullable LocalDate day, double price, String why) {
        String sentence = Character.toUpperCase(why.charAt(0)) + why.substring(1) + ".";
        return new MovedDate(name, boat, promise.date(), day, true, price, sentence);
    }
}

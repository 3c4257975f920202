package sternwright.season.dated.make;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import sternwright.season.Hoist;
import sternwright.season.PlaceClass;
import sternwright.season.Promise;
import sternwright.season.SeasonProblem;
import sternwright.season.Yard;
import sternwright.season.dated.Meaning;
import sternwright.season.dated.OperationName;
import sternwright.season.dated.PromisedDate;
import sternwright.season.dated.SeasonBoat;
import sternwright.season.dated.SeasonFault;
import sternwright.season.dated.SeasonRequest;
import sternwright.season.dated.WorkingTime;
import sternwright.yard.resource.CrewMember;
import sternwright.yard.resource.Resources;

/**
 * A yard's season in the lean form, with the way back.
 *
 * @param request what was asked
 * @param time the working days behind the axis
 * @param problem the lean season
 * @param meanings the meaning of each of its operations, in the same order
 * @param lost promises of operations that the planned visits no longer contain
 * @param pointValue what one point of the lean season is worth, in the yard's currency
 */
public record SeasonOfYard(
        SeasonRequest request,
        WorkingTime time,
        SeasonProblem problem,
        List<Meaning> meanings,
        List<PromisedDate> lost,
        double pointValue) {
    /** Copies the lists. */
    public SeasonOfYard {
        meanings = List.copyOf(meanings);
        lost = List.copyOf(lost);
    }

    /**
     * Makes the lean season.
     *
     * @param request a request in which {@link SeasonFaults} finds nothing
     * @return the season
     * @throws IllegalArgumentException with the first fault if there is one
     */
    public static SeasonOfYard of(SeasonRequest request) {
        Optional<SeasonFault> fault = SeasonFaults.of(request).stream().findFirst();
        if (fault.isPresent()) {
            throw new IllegalArgumentException(fault.get().toString());
        }
        WorkingTime time = request.time();
        OperationMaker make = new OperationMaker(request, time);
        Winterings winter = Winterings.of(request.yard().season(), request.from());
        for (SeasonBoat boat : request.boats()) {
            new BoatOperations(make, boat, winter).all();
        }
        LeanSeason lean = make.lean;
        Map<OperationName, Integer> index = index(lean.meanings);
        List<PromisedDate> lost = request.promises().stream()
                .filter(p -> !index.containsKey(p.name()))
                .toList();
        SeasonProblem problem = new SeasonProblem(
                yard(make),
                lean.visits,
                lean.halves,
                lean.operations,
                lean.lags,
                lean.stays,
                promises(make, index),
                make.points.weights());
        return new SeasonOfYard(request, time, problem, lean.meanings, lost, make.points.value());
    }

    /** The position of each operation by its name. */
    public Map<OperationName, Integer> index() {
        return index(meanings);
    }

    private static Map<OperationName, Integer> index(List<Meaning> meanings) {
        Map<OperationName, Integer> index = new HashMap<>();
        for (int i = 0; i < meanings.size(); i++) {
            index.put(meanings.get(i).name(), i);
        }
        return index;
    }

    private static List<Promise> promises(OperationMaker make, Map<OperationName, Integer> index) {
        List<Promise> promises = new ArrayList<>();
        for (PromisedDate promise : make.request.promises()) {
            Integer operation = index.get(promise.name());
            if (operation != null) {
                int start = make.time.quarterFrom(promise.date()) + promise.quarter();
                promises.add(new Promise(operation, start, make.points.moved(promise.movedPrice())));
            }
        }
        return promises;
    }

    private static Yard yard(OperationMaker make) {
        Resources resources = make.request.resources();
        WorkingTime time = make.time;
        List<Hoist> hoists = new ArrayList<>();
        for (int h = 0; h < resources.hoists().size(); h++) {
            var hoist = resources.hoists().get(h);
            Set<Integer> down = new TreeSet<>(make.fit.closed(h));
            down.addAll(down(make.request, hoist.id(), time));
            hoists.add(new Hoist(hoist.name(), slots(hoist.liftsADay()), List.copyOf(down)));
        }
        List<PlaceClass> places = resources.standing().stream()
                .map(s -> new PlaceClass(s.name(), s.places()))
                .toList();
        int weeks = time.axis().weeks();
        return new Yard(
                time.axis(),
                make.kinds.names(),
                make.kinds.people(time),
                IntStream.range(0, weeks)
                        .mapToObj(w -> extraHands(resources, time, w))
                        .toList(),
                (int) Math.floor(
                        resources.prices().evenShare() * resources.crew().size()),
                hoists,
                make.fit.classes(),
                places,
                List.of(),
                make.fit.daySets());
    }

    private static List<Integer> down(SeasonRequest request, String hoistId, WorkingTime time) {
        return IntStream.range(0, time.days().size())
                .filter(d -> request.hoistDown(hoistId, time.days().get(d)))
                .boxed()
                .toList();
    }

    /** Lifts of a day spread evenly over its quarters. */
    static List<Integer> slots(int liftsADay) {
        int parts = WorkingTime.QUARTERS_PER_DAY;
        return IntStream.range(0, parts)
                .mapToObj(q -> (q + 1) * liftsADay / parts - q * liftsADay / parts)
                .toList();
    }

    /** Overtime of those who are there, in whole extra people for the week. */
    private static int extraHands(Resources resources, WorkingTime time, int week) {
        double hours = resources.crew().stream()
                .filter(c -> time.days().subList(week * time.daysPerWeek(), (week + 1) * time.daysPerWeek()).stream()
                        .anyMatch(c::there))
                .mapToDouble(CrewMember::overtimeHoursAWeek)
                .sum();
        return (int) Math.round(hours / hoursAWeek(resources, time.daysPerWeek()));
    }

    private static double hoursAWeek(Resources resources, int daysPerWeek) {
        return resources.times().hoursADay() * daysPerWeek;
    }

    /**
     * The same season with another lean form of it, such as one in which overtime is allowed for work already begun.
     *
     * @param other the same operations in the same order
     */
    public SeasonOfYard with(SeasonProblem other) {
        return new SeasonOfYard(request, time, other, meanings, lost, pointValue);
    }
}

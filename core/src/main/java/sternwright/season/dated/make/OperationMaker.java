package sternwright.season.dated.make;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import sternwright.boat.Boat;
import sternwright.season.Due;
import sternwright.season.Operation;
import sternwright.season.dated.Meaning;
import sternwright.season.dated.OperationName;
import sternwright.season.dated.PromisedDate;
import sternwright.season.dated.SeasonRequest;
import sternwright.season.dated.Step;
import sternwright.season.dated.WorkingTime;
import sternwright.visit.planned.PlannedVisit;
import sternwright.visit.planned.PlannedWork;
import sternwright.yard.resource.StayTimes;

/** Makes operations of the lean season; knows what has begun, what is promised for certain, and what today is. */
final class OperationMaker {
    /** An emergency weighs as much as so many boats that are late. */
    private static final int EMERGENCY_WEIGHT = 4;

    final SeasonRequest request;
    final WorkingTime time;
    final HoistFit fit;
    final SkillKinds kinds;
    final Points points;
    final LeanSeason lean = new LeanSeason();
    private final int nowQ;
    private final Map<OperationName, PromisedDate> begun;
    private final Map<OperationName, PromisedDate> firm;
    private final Map<String, Integer> names = new HashMap<>();

    OperationMaker(SeasonRequest request, WorkingTime time) {
        this.request = request;
        this.time = time;
        fit = new HoistFit(request, time);
        kinds = new SkillKinds(request.resources().crew());
        points = Points.of(request);
        nowQ = time.quarterFrom(request.today());
        begun = byName(request.begun());
        firm = byName(request.promises().stream().filter(PromisedDate::firm).toList());
    }

    private static Map<OperationName, PromisedDate> byName(List<PromisedDate> dates) {
        return dates.stream().collect(Collectors.toMap(PromisedDate::name, d -> d, (a, b) -> b));
    }

    StayTimes times() {
        return request.resources().times();
    }

    /**
     * What an operation is before it has a place on the axis.
     *
     * @param half its half
     * @param step what it is
     * @param name its name in the visit
     * @param lengthQ quarters
     * @param earliestQ no start before
     * @param due due date
     * @param dueWords why
     */
    record Draft(int half, Step step, String name, int lengthQ, int earliestQ, Due due, String dueWords) {
        private Draft called(String other) {
            return new Draft(half, step, other, lengthQ, earliestQ, due, dueWords);
        }
    }

    /** A second operation of the same name in a visit gets a number. */
    private Draft unique(Draft draft) {
        int visit = lean.halves.get(draft.half).visit();
        int before = names.merge(visit + "/" + draft.name, 1, Integer::sum);
        return before == 1 ? draft : draft.called(draft.name + " (" + before + ")");
    }

    /** A lift or launch. */
    int hoist(Boat boat, Draft wanted, HoistFit.Fit way) {
        Draft draft = unique(wanted);
        Operation operation = new Operation(
                draft.name,
                draft.half,
                draft.lengthQ,
                draft.earliestQ,
                time.axis().quarters(),
                Operation.NONE,
                0,
                way.liftClass(),
                way.days(),
                List.of(),
                draft.due);
        return add(operation, meaning(boat, draft, List.of(), 0, Set.of()));
    }

    /** Work by people. */
    int work(Boat boat, Draft wanted, List<PlannedWork> works, double minutes, Set<String> skills) {
        Draft draft = unique(wanted);
        return add(plain(draft, kinds.kind(skills), 1), meaning(boat, draft, works, minutes, skills));
    }

    /** Something that needs nobody: the boat stands ashore when the season begins. */
    int stands(Boat boat, int half) {
        Draft draft = new Draft(half, Step.STANDS, Step.STANDS.words(), 1, 0, Due.NONE, "");
        return lean.add(plain(draft, Operation.NONE, 0).within(0, 1), meaning(boat, draft, List.of(), 0, Set.of()));
    }

    private Operation plain(Draft draft, int skill, int hands) {
        return new Operation(
                draft.name,
                draft.half,
                draft.lengthQ,
                draft.earliestQ,
                time.axis().quarters(),
                skill,
                hands,
                Operation.NONE,
                Operation.NONE,
                List.of(),
                draft.due);
    }

    private Meaning meaning(Boat boat, Draft draft, List<PlannedWork> works, double minutes, Set<String> skills) {
        String visit = lean.visits.get(lean.halves.get(draft.half).visit()).name();
        return new Meaning(
                boat.id(), boat.name(), visit, draft.name, draft.step, works, minutes, skills, draft.dueWords);
    }

    /** Whether an operation that has been added has begun. */
    boolean hasBegun(int operation) {
        return begun.containsKey(lean.meanings.get(operation).name());
    }

    /** What has begun is nailed; what is promised for certain keeps its day; nothing else begins before today. */
    private int add(Operation operation, Meaning meaning) {
        PromisedDate started = begun.get(meaning.name());
        if (started != null) {
            return lean.add(operation.begun(time.quarterFrom(started.date()) + started.quarter()), meaning);
        }
        int earliest = Math.max(operation.earliestQ(), nowQ);
        PromisedDate kept = firm.get(meaning.name());
        if (kept == null) {
            return lean.add(operation.within(earliest, operation.latestEndQ()), meaning);
        }
        int day = time.quarterFrom(kept.date());
        int end = Math.min(time.axis().quarters(), day + WorkingTime.QUARTERS_PER_DAY - 1 + operation.lengthQ());
        return lean.add(operation.within(Math.max(day, nowQ), end), meaning);
    }

    Due frost(LocalDate frost) {
        return new Due(Due.Kind.FROST, time.quarterFrom(frost), points.frost(), 0);
    }

    /**
     * The day by which a visit should be over. One that can begin with the season has as many working days as a short stay: what was
     * overdue that day is in many visits at once, and no yard does all of them in what is left of the month.
     */
    LocalDate lastDay(PlannedVisit visit) {
        LocalDate soonest = time.date(times().shortStayDays() * WorkingTime.QUARTERS_PER_DAY);
        return quarterFrom(visit.from()) == 0 && visit.to().isBefore(soonest) ? soonest : visit.to();
    }

    Due by(LocalDate date) {
        return new Due(Due.Kind.WANTED, time.quarterAfter(date), points.late(), 0);
    }

    Due wanted(LocalDate date) {
        return new Due(Due.Kind.WANTED, time.quarterAfter(date), points.late(), points.early());
    }

    Due urgent(int byQ) {
        return new Due(Due.Kind.WANTED, byQ, EMERGENCY_WEIGHT * points.late(), 0);
    }

    /** The quarter of a date, or of the beginning of the season if there is none. */
    int quarterFrom(@Nullable LocalDate date) {
        return date == null ? 0 : Math.min(time.quarterFrom(date), time.axis().quarters() - 1);
    }
}

package sternwright.season.dated.make;

import static sternwright.season.dated.WorkingTime.QUARTERS_PER_DAY;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import sternwright.boat.Boat;
import sternwright.season.Due;
import sternwright.season.Lag;
import sternwright.season.Stay;
import sternwright.season.dated.OwnerDate;
import sternwright.season.dated.SeasonBoat;
import sternwright.season.dated.Step;
import sternwright.service.Place;
import sternwright.visit.planned.PlannedVisit;

/** Visits to boats ashore: lift, wash and inspect, works, launch, and afloat again what wants her afloat. */
final class StayOperations {
    private final OperationMaker make;
    private final SeasonBoat visits;
    private final Boat boat;
    private final Winterings winter;
    private final Emergencies emergencies;
    private final AfterLaunch afterLaunch;

    StayOperations(OperationMaker make, SeasonBoat visits, Winterings winter) {
        this.make = make;
        this.visits = visits;
        this.boat = visits.boat();
        this.winter = winter;
        emergencies = new Emergencies(make, boat, winter);
        afterLaunch = new AfterLaunch(make, boat);
    }

    private HoistFit.Fit way() {
        return make.fit
                .of(boat.hull())
                .orElseThrow(() -> new IllegalStateException(boat.id() + ": no hoist takes her"));
    }

    /** Lifted in autumn, or standing ashore already; launched in spring. */
    BoatOperations.Ends winter(List<PlannedVisit> autumn, List<PlannedVisit> spring) {
        int visit = make.lean.visit(boat.id(), boat.name(), emergencies.winterVisit());
        int first = make.lean.half(visit, "lay-up");
        int second = make.lean.half(visit, "recommission");
        List<Integer> out = winter.stands(make.request, boat.id())
                ? List.of(make.stands(boat, first))
                : winterOut(first, liftFrom(autumn));
        LocalDate wanted =
                make.request.date(boat.id(), OwnerDate.Kind.AFLOAT_BY).orElse(null);
        List<Integer> early = early(visit, first, autumn, wanted);
        int earliestLaunch = earliestLaunch(wanted);
        int earliestWork = Math.max(0, earliestLaunch - make.times().beforeLaunchDays() * QUARTERS_PER_DAY);
        List<Integer> late = new ArrayList<>();
        for (PlannedVisit v :
                spring.stream().filter(v -> v.place() == Place.ASHORE).toList()) {
            for (WorkGroup group : WorkGroup.of(v, Step.RECOMMISSION)) {
                if (group.step() == Step.LAY_UP) {
                    early.add(0, work(group, first, 0, null, ""));
                } else {
                    late.add(work(group, second, earliestWork, null, ""));
                }
            }
        }
        int launch = launch(second, earliestLaunch, wanted);
        chain(out, early, late, launch);
        List<Integer> works = new ArrayList<>(early);
        works.addAll(late);
        emergencies.worksIn(visit, out.get(out.size() - 1), works, launch);
        make.lean.stays.add(new Stay(out.get(0), launch, placeClass()));
        List<PlannedVisit> wet =
                spring.stream().filter(v -> v.place() != Place.ASHORE).toList();
        return new BoatOperations.Ends(List.of(out.get(0)), afterLaunch.all(wet, second, launch));
    }

    /** First what belongs to the lay-up, then what has time until the recommission. */
    private List<Integer> early(int visit, int half, List<PlannedVisit> autumn, @Nullable LocalDate wanted) {
        List<Integer> layUp = new ArrayList<>();
        List<Integer> later = new ArrayList<>();
        int winterHalf = -1;
        LocalDate begins = winter.recommission().from();
        LocalDate before = wanted != null && wanted.isBefore(begins) ? wanted : begins.minusDays(1);
        for (PlannedVisit v : autumn) {
            for (WorkGroup group : WorkGroup.of(v, Step.WINTER)) {
                if (group.step() == Step.WINTER) {
                    winterHalf = winterHalf < 0 ? make.lean.half(visit, Step.WINTER.words()) : winterHalf;
                    later.add(work(group, winterHalf, 0, before, "to be done by "));
                } else {
                    layUp.add(work(group, half, 0, layUpBy(v), "due by "));
                }
            }
        }
        layUp.addAll(later);
        return layUp;
    }

    /** The last day of the visit, but never so soon after the owner has given her up that nobody could keep it. */
    private LocalDate layUpBy(PlannedVisit visit) {
        LocalDate end = winter.layUp().to();
        return make.request
                .date(boat.id(), OwnerDate.Kind.OUT_FROM)
                .map(out -> make.time.date(make.quarterFrom(out) + make.times().shortStayDays() * QUARTERS_PER_DAY))
                .map(soon -> soon.isBefore(end) ? soon : end)
                .filter(make.lastDay(visit)::isBefore)
                .orElse(make.lastDay(visit));
    }

    /** Out for the winter by the end of lay-up, or at once where something is wrong with her. */
    private List<Integer> winterOut(int half, int fromQ) {
        Optional<LocalDate> urgent =
                emergencies.during(emergencies.winterVisit()).stream().findFirst();
        LocalDate end = winter.layUp().to();
        return urgent.isPresent()
                ? out(
                        half,
                        Math.min(fromQ, make.quarterFrom(urgent.get())),
                        emergencies.atOnce(urgent.get()),
                        "emergency, out of the water at once")
                : out(half, fromQ, make.by(end), "lay-up ends on " + end);
    }

    private int liftFrom(List<PlannedVisit> autumn) {
        Optional<LocalDate> given = make.request.date(boat.id(), OwnerDate.Kind.OUT_FROM);
        LocalDate planned = autumn.stream()
                .map(PlannedVisit::from)
                .min(LocalDate::compareTo)
                .filter(d -> d.isAfter(winter.layUp().from()))
                .orElse(winter.layUp().from());
        return make.quarterFrom(given.orElse(planned));
    }

    /** Lift and wash; the lift is the first. */
    private List<Integer> out(int half, int fromQ, Due due, String words) {
        int lift = make.hoist(boat, draft(half, Step.LIFT, 1, fromQ, due, words), way());
        Set<String> skills = make.times().washSkills();
        double minutes = make.times().washMinutes();
        int wash = make.work(
                boat,
                draft(half, Step.WASH, make.time.quarters(minutes), fromQ, Due.NONE, ""),
                List.of(),
                minutes,
                skills);
        make.lean.within(lift, wash, 0, make.times().washWithinDays() * QUARTERS_PER_DAY);
        return List.of(lift, wash);
    }

    private static OperationMaker.Draft draft(int half, Step step, int lengthQ, int fromQ, Due due, String words) {
        return new OperationMaker.Draft(half, step, step.words(), lengthQ, fromQ, due, words);
    }

    private List<Integer> works(PlannedVisit visit, int half, Step usual, int fromQ, @Nullable LocalDate by) {
        List<Integer> operations = new ArrayList<>();
        for (WorkGroup group : WorkGroup.of(visit, usual)) {
            operations.add(work(group, half, fromQ, by, "due by "));
        }
        return operations;
    }

    /** A group of works: by its frost if it has one, else by a day. */
    private int work(WorkGroup group, int half, int fromQ, @Nullable LocalDate by, String byWords) {
        LocalDate frost = group.frost() ? winter.frost(visits.berth().firstFrost()) : null;
        Due due = frost != null ? make.frost(frost) : by != null ? make.by(by) : Due.NONE;
        String words = frost != null
                ? "first frost at " + visits.berth().name() + " on " + frost
                : by != null ? byWords + by : "";
        int from = Math.max(fromQ, PartsWaitedFor.earliest(make, boat.id(), group));
        var draft = new OperationMaker.Draft(
                half, group.step(), group.operation(), make.time.quarters(group.minutes()), from, due, words);
        return make.work(boat, draft, group.works(), group.minutes(), group.skills());
    }

    private int earliestLaunch(@Nullable LocalDate wanted) {
        if (wanted == null) {
            return make.quarterFrom(winter.recommission().from());
        }
        return Math.max(0, make.time.quarterAfter(wanted) - make.times().launchEarlyDays() * QUARTERS_PER_DAY - 1);
    }

    private int launch(int half, int fromQ, @Nullable LocalDate wanted) {
        Due due = wanted == null ? make.by(winter.recommission().to()) : make.wanted(wanted);
        String words = wanted == null
                ? "recommission ends on " + winter.recommission().to()
                : "the owner wants to be afloat by " + wanted;
        return make.hoist(boat, draft(half, Step.LAUNCH, 1, fromQ, due, words), way());
    }

    /** Out, early works, late works, launch: in this order. */
    private void chain(List<Integer> out, List<Integer> early, List<Integer> late, int launch) {
        int ready = out.get(out.size() - 1);
        make.lean.oneAfterAnother(early);
        make.lean.oneAfterAnother(late);
        early.forEach(e -> make.lean.after(ready, e));
        for (int l : late) {
            early.forEach(e -> make.lean.after(e, l));
            if (early.isEmpty()) {
                make.lean.after(ready, l);
            }
            make.lean.within(l, launch, 0, make.times().beforeLaunchDays() * QUARTERS_PER_DAY);
        }
        if (late.isEmpty()) {
            early.forEach(e -> make.lean.after(e, launch));
        }
        if (late.isEmpty() && early.isEmpty()) {
            make.lean.after(ready, launch);
        }
    }

    private int placeClass() {
        return make.request.resources().classFor(boat.hull().lengthM()).orElseThrow();
    }

    /** Lifted for work and put back as soon as it is done. */
    BoatOperations.Ends shortStay(PlannedVisit visit) {
        int at = make.lean.visit(boat.id(), boat.name(), "ashore " + BoatOperations.month(visit.from()));
        int half = make.lean.half(at, "visit ashore");
        int from = make.quarterFrom(visit.from());
        List<Integer> out = out(half, from, Due.NONE, "");
        List<Integer> works = works(visit, half, Step.WORK, from, null);
        List<Integer> dry = works.stream().filter(this::ashore).toList();
        List<Integer> wet = works.stream().filter(w -> !ashore(w)).toList();
        LocalDate by = make.lastDay(visit);
        int launch = make.hoist(boat, draft(half, Step.LAUNCH, 1, from, make.by(by), "due by " + by), way());
        return ashoreOnly(at, out, dry, wet, launch);
    }

    private boolean ashore(int operation) {
        Step step = make.lean.meanings.get(operation).step();
        return step != Step.SETTLED && step != Step.TRIAL;
    }

    private BoatOperations.Ends ashoreOnly(
            int visit, List<Integer> out, List<Integer> dry, List<Integer> wet, int launch) {
        chain(out, dry, List.of(), launch);
        List<Integer> urgent = emergencies.worksIn(visit, out.get(out.size() - 1), dry, launch);
        int work = Stream.concat(dry.stream(), urgent.stream())
                .mapToInt(i -> make.lean.operations.get(i).lengthQ())
                .sum();
        int most = work + make.times().shortStayDays() * QUARTERS_PER_DAY;
        make.lean.lags.add(new Lag(out.get(0), launch, 1, most));
        make.lean.stays.add(new Stay(out.get(0), launch, placeClass()));
        return new BoatOperations.Ends(List.of(out.get(0)), afterLaunch.follow(wet, launch));
    }

    /** A boat that must come out at once. */
    BoatOperations.Ends emergency(LocalDate on) {
        int at = make.lean.visit(boat.id(), boat.name(), "emergency " + on);
        int half = make.lean.half(at, "emergency");
        int from = make.quarterFrom(on);
        List<Integer> out = out(half, from, Due.NONE, "");
        int work = emergencies.work(half, on, Due.NONE, "");
        int launch = make.hoist(
                boat,
                draft(half, Step.LAUNCH, 1, from, emergencies.soon(on), "emergency, afloat again in four days"),
                way());
        return ashoreOnly(at, out, List.of(work), List.of(), launch);
    }
}

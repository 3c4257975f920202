package sternwright.season.dated.make;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import sternwright.season.Due;
import sternwright.season.dated.OwnerDate;
import sternwright.season.dated.SeasonBoat;
import sternwright.season.dated.Step;
import sternwright.season.dated.WorkingTime;
import sternwright.visit.planned.PlannedVisit;

/** Visits to boats in the water: they need people and nothing else. */
final class AfloatOperations {
    private final OperationMaker make;
    private final SeasonBoat boat;
    private final Winterings winter;

    AfloatOperations(OperationMaker make, SeasonBoat boat, Winterings winter) {
        this.make = make;
        this.boat = boat;
        this.winter = winter;
    }

    BoatOperations.Ends visit(PlannedVisit visit) {
        Winterings.Part part = winter.part(visit.from(), visit.to());
        Step usual = part == Winterings.Part.AUTUMN
                ? Step.LAY_UP
                : part == Winterings.Part.SPRING ? Step.RECOMMISSION : Step.WORK;
        String name = usual == Step.WORK ? "visit" : usual.words();
        int at = make.lean.visit(
                boat.boat().id(),
                boat.boat().name(),
                name + " afloat " + (usual == Step.WORK ? BoatOperations.month(visit.from()) : winter.years()));
        int half = make.lean.half(at, name);
        List<Integer> plain = new ArrayList<>();
        List<Integer> settled = new ArrayList<>();
        List<Integer> trials = new ArrayList<>();
        for (WorkGroup group : WorkGroup.of(visit, usual)) {
            int operation = operation(group, half, visit, part);
            (group.step() == Step.SETTLED ? settled : group.step() == Step.TRIAL ? trials : plain).add(operation);
        }
        make.lean.oneAfterAnother(plain);
        make.lean.oneAfterAnother(settled);
        make.lean.oneAfterAnother(trials);
        for (int trial : trials) {
            plain.forEach(p -> make.lean.after(p, trial));
            settled.forEach(s -> make.lean.after(s, trial));
        }
        settled.forEach(s -> plain.forEach(p -> make.lean.after(p, s)));
        List<Integer> all = new ArrayList<>(plain);
        all.addAll(settled);
        all.addAll(trials);
        return new BoatOperations.Ends(all, all);
    }

    private int operation(WorkGroup group, int half, PlannedVisit visit, Winterings.Part part) {
        LocalDate frost = group.frost() ? winter.frost(boat.berth().firstFrost()) : null;
        Optional<LocalDate> wanted = part == Winterings.Part.SPRING
                ? make.request.date(boat.boat().id(), OwnerDate.Kind.AFLOAT_BY)
                : Optional.empty();
        LocalDate by = wanted.orElse(make.lastDay(visit));
        Due due = frost != null ? make.frost(frost) : make.by(by);
        String words = frost != null
                ? "first frost at " + boat.berth().name() + " on " + frost
                : wanted.isPresent() ? "the owner wants to be afloat by " + by : "due by " + by;
        var draft = new OperationMaker.Draft(
                half,
                group.step(),
                group.operation(),
                make.time.quarters(group.minutes()),
                earliest(visit, group, wanted.orElse(null)),
                due,
                words);
        return make.work(boat.boat(), draft, group.works(), group.minutes(), group.skills());
    }

    private int earliest(PlannedVisit visit, WorkGroup group, @Nullable LocalDate wanted) {
        int earliest = make.quarterFrom(visit.from());
        if (wanted != null) {
            int before = make.times().beforeLaunchDays() * WorkingTime.QUARTERS_PER_DAY;
            earliest = Math.max(0, Math.min(earliest, make.quarterFrom(wanted) - before));
        }
        return Math.max(earliest, PartsWaitedFor.earliest(make, boat.boat().id(), group));
    }
}

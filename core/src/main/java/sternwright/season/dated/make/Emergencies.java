package sternwright.season.dated.make;

import static sternwright.season.dated.WorkingTime.QUARTERS_PER_DAY;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import sternwright.boat.Boat;
import sternwright.boat.Winter;
import sternwright.season.Due;
import sternwright.season.Operation;
import sternwright.season.dated.OperationName;
import sternwright.season.dated.OwnerDate;
import sternwright.season.dated.PromisedDate;
import sternwright.season.dated.SeasonRequest;
import sternwright.season.dated.Step;

/**
 * What is wrong with one boat at once: afloat she is lifted for it; where she stands ashore already, or is to be lifted for the winter
 * in these days anyway, people come to her place.
 */
final class Emergencies {
    private static final int WORK_QUARTERS = 4;
    private static final int DAYS = 4;

    /** A lift promised within so many days is brought forward instead of lifting her twice. */
    private static final int SOON_DAYS = 7;

    private final OperationMaker make;
    private final Boat boat;
    private final Winterings winter;

    Emergencies(OperationMaker make, Boat boat, Winterings winter) {
        this.make = make;
        this.boat = boat;
        this.winter = winter;
    }

    /** Name of the visit in which she stands ashore for the winter. */
    String winterVisit() {
        return "winter ashore " + winter.years();
    }

    /** Days on which she must be lifted for it. */
    List<LocalDate> afloat() {
        return dates().filter(d -> visitOn(d).isEmpty()).toList();
    }

    /** Days that fall into a visit ashore. */
    List<LocalDate> during(String visit) {
        return dates().filter(d -> visitOn(d).filter(visit::equals).isPresent()).toList();
    }

    private Stream<LocalDate> dates() {
        return make.request
                .dates(boat.id(), OwnerDate.Kind.EMERGENCY)
                .map(OwnerDate::date)
                .sorted();
    }

    private Optional<String> visitOn(LocalDate day) {
        Optional<String> begun = make.request.begun().stream()
                .filter(b -> b.name().boatId().equals(boat.id()) && !b.date().isAfter(day))
                .map(PromisedDate::name)
                .filter(n ->
                        n.operation().equals(Step.LIFT.words()) || n.operation().equals(Step.STANDS.words()))
                .map(OperationName::visit)
                .filter(v -> day.isBefore(launched(v)))
                .findFirst();
        boolean inWinter = boat.winter() == Winter.ASHORE
                && (winter.stands(make.request, boat.id()) || keptAshore(day))
                && day.isBefore(launched(winterVisit()));
        return begun.or(() -> inWinter ? Optional.of(winterVisit()) : Optional.empty());
    }

    /** The day she was or will be launched, as far as it is known. */
    private LocalDate launched(String visit) {
        OperationName launch = new OperationName(boat.id(), visit, Step.LAUNCH.words());
        return known(launch)
                .or(() -> make.request.date(boat.id(), OwnerDate.Kind.AFLOAT_BY))
                .filter(d -> known(launch).isPresent() || visit.equals(winterVisit()))
                .orElse(visit.equals(winterVisit()) ? winter.recommission().to() : LocalDate.MAX);
    }

    private Optional<LocalDate> known(OperationName name) {
        SeasonRequest request = make.request;
        return Stream.concat(request.begun().stream(), request.promises().stream())
                .filter(p -> p.name().equals(name))
                .map(PromisedDate::date)
                .findFirst();
    }

    /** Whether she would be lifted for the winter about this day anyway, so that she is not put back. */
    private boolean keptAshore(LocalDate day) {
        if (!winter.ahead()) {
            return false;
        }
        LocalDate middle = winter.layUp()
                .from()
                .plusDays(ChronoUnit.DAYS.between(
                                winter.layUp().from(), winter.layUp().to())
                        / 2);
        LocalDate from = known(new OperationName(boat.id(), winterVisit(), Step.LIFT.words()))
                .map(d -> d.minusDays(SOON_DAYS))
                .orElse(middle);
        return !day.isBefore(
                make.request.date(boat.id(), OwnerDate.Kind.OUT_FROM).orElse(from));
    }

    /** What must be out of the water at once, from a day. */
    Due atOnce(LocalDate day) {
        return make.urgent(make.quarterFrom(day) + QUARTERS_PER_DAY);
    }

    /** What must be over soon after a day. */
    Due soon(LocalDate day) {
        return make.urgent(make.quarterFrom(day) + DAYS * QUARTERS_PER_DAY);
    }

    /** The work itself in a visit that is for nothing else. */
    int work(int half, LocalDate day, Due due, String words) {
        int from = make.quarterFrom(day);
        var draft = new OperationMaker.Draft(half, Step.WORK, "emergency work", WORK_QUARTERS, from, due, words);
        Set<String> skills = make.kinds.anyone(Set.of("mechanical")) ? Set.of("mechanical") : Set.of();
        return make.work(boat, draft, List.of(), make.time.hoursADay() * 60, skills);
    }

    /**
     * The works of emergencies in a visit ashore, one gang on board at a time: after what has begun, before what has not.
     *
     * @param visit the visit
     * @param ready the operation that has her ashore
     * @param works the other works of the visit
     * @param launch its launch
     */
    List<Integer> worksIn(int visit, int ready, List<Integer> works, int launch) {
        List<Integer> urgent = new ArrayList<>();
        for (LocalDate day : during(make.lean.visits.get(visit).name())) {
            int half = make.lean.half(visit, "emergency");
            int work = work(half, day, soon(day), "emergency, seen to within " + DAYS + " working days");
            make.lean.after(ready, work);
            works.forEach(w -> {
                if (goesFirst(w, work)) {
                    make.lean.after(w, work);
                } else {
                    make.lean.after(work, w);
                }
            });
            make.lean.after(work, launch);
            urgent.add(work);
        }
        make.lean.oneAfterAnother(urgent);
        return urgent;
    }

    /** What has begun, must be over by a day, or protects from a frost that is near is not put off. */
    private boolean goesFirst(int work, int urgent) {
        Operation o = make.lean.operations.get(work);
        boolean frost = o.due().kind() == Due.Kind.FROST
                && o.due().latePerQ() > 0
                && o.due().byQ() <= make.lean.operations.get(urgent).due().byQ();
        return make.hasBegun(work) || o.latestEndQ() < make.time.axis().quarters() || frost;
    }
}

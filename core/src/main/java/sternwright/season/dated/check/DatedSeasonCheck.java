package sternwright.season.dated.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import sternwright.boat.Boat;
import sternwright.season.dated.OperationName;
import sternwright.season.dated.OwnerDate;
import sternwright.season.dated.PromisedDate;
import sternwright.season.dated.SeasonBoat;
import sternwright.season.dated.SeasonRequest;
import sternwright.season.dated.Step;
import sternwright.season.dated.answer.DatedOperation;
import sternwright.season.dated.answer.DatedSeason;
import sternwright.season.dated.answer.DatedVisit;
import sternwright.season.dated.answer.MovedDate;
import sternwright.visit.planned.PlannedWork;

/** Proves a dated season against what was asked. */
public final class DatedSeasonCheck {
    private final SeasonRequest request;
    private final DatedSeason season;
    private final Map<String, Boat> boats;
    private final Set<OperationName> begun;
    private final List<String> wrong = new ArrayList<>();

    private DatedSeasonCheck(SeasonRequest request, DatedSeason season) {
        this.request = request;
        this.season = season;
        boats = request.boats().stream().map(SeasonBoat::boat).collect(Collectors.toMap(Boat::id, b -> b));
        begun = request.begun().stream().map(PromisedDate::name).collect(Collectors.toSet());
    }

    /**
     * Everything that is wrong with a season.
     *
     * @param request what was asked
     * @param season the answer
     * @return sentences; empty if the season is sound
     */
    public static List<String> of(SeasonRequest request, DatedSeason season) {
        DatedSeasonCheck check = new DatedSeasonCheck(request, season);
        check.everyWorkOnce();
        check.days();
        check.orderInVisits();
        check.promises();
        check.wrong.addAll(new ResourcesOnDays(request, season, check.boats, check.begun).wrong());
        return List.copyOf(check.wrong);
    }

    private void everyWorkOnce() {
        for (SeasonBoat boat : request.boats()) {
            List<PlannedWork> asked = boat.visits().stream()
                    .filter(v -> !v.from().isAfter(season.to()))
                    .flatMap(v -> v.works().stream())
                    .toList();
            List<PlannedWork> planned = season.visits().stream()
                    .filter(v -> v.boatId().equals(boat.boat().id()))
                    .flatMap(v -> v.operations().stream())
                    .flatMap(o -> o.meaning().works().stream())
                    .toList();
            if (!counted(asked).equals(counted(planned))) {
                wrong.add(boat.boat().name() + ": her planned works are not each in the season once");
            }
        }
    }

    private static Map<PlannedWork, Long> counted(List<PlannedWork> works) {
        return works.stream().collect(Collectors.groupingBy(w -> w, Collectors.counting()));
    }

    private void days() {
        for (DatedOperation o : season.operations()) {
            boolean fixed = begun.contains(o.meaning().name());
            LocalDate day = o.from().toLocalDate();
            if (!request.yard().calendar().works(day)
                    || !request.yard().calendar().works(o.until().toLocalDate())) {
                add(o, "is on " + day + ", a day on which the yard does not work");
            }
            if (!fixed && o.meaning().step() != Step.STANDS && day.isBefore(request.today())) {
                add(o, "is planned for " + day + ", before today");
            }
            if (!o.until().isAfter(o.from())) {
                add(o, "ends before it begins");
            }
            if (!fixed) {
                waits(o, day);
            }
        }
    }

    private void waits(DatedOperation o, LocalDate day) {
        for (OwnerDate date : request.dates()) {
            if (!date.boatId().equals(o.meaning().boatId())) {
                continue;
            }
            boolean part = date.kind() == OwnerDate.Kind.PART_IN
                    && o.meaning().works().stream()
                            .anyMatch(w -> w.inForce().rule().id().equals(date.work()));
            boolean lift = date.kind() == OwnerDate.Kind.OUT_FROM
                    && o.meaning().step() == Step.LIFT
                    && o.meaning().visit().startsWith("winter");
            if ((part || lift) && day.isBefore(date.date())) {
                add(o, "is on " + day + ", before " + date.date());
            }
        }
    }

    private void orderInVisits() {
        for (DatedVisit visit : season.visits()) {
            DatedOperation launch = step(visit, Step.LAUNCH);
            DatedOperation lift = step(visit, Step.LIFT);
            DatedOperation wash = step(visit, Step.WASH);
            for (DatedOperation o : visit.operations()) {
                boolean afloat = o.meaning().step() == Step.SETTLED
                        || o.meaning().step() == Step.TRIAL
                        || o.meaning().operation().startsWith("afloat");
                if (launch != null && o != launch && afloat == o.from().isBefore(launch.until())) {
                    add(o, afloat ? "is before the launch" : "is not over when she is launched");
                }
                if (lift != null && o != lift && o.from().isBefore(lift.until())) {
                    add(o, "is before the lift");
                }
                if (launch != null && o.meaning().step() == Step.SETTLED) {
                    settled(launch, o);
                }
            }
            if (lift != null && wash != null) {
                washed(lift, wash);
            }
        }
    }

    private void settled(DatedOperation launch, DatedOperation o) {
        int days = request.resources().times().settlingDays();
        if (workingDays(launch.from().toLocalDate(), o.from().toLocalDate()) < days) {
            add(o, "is on " + o.from() + ", less than " + days + " working days after the launch");
        }
    }

    private void washed(DatedOperation lift, DatedOperation wash) {
        int most = request.resources().times().washWithinDays() + 1;
        if (workingDays(lift.from().toLocalDate(), wash.from().toLocalDate()) > most) {
            add(wash, "is too long after the lift");
        }
    }

    private long workingDays(LocalDate from, LocalDate to) {
        return to.isBefore(from)
                ? 0
                : from.datesUntil(to).filter(request.yard().calendar()::works).count();
    }

    private static @org.jspecify.annotations.Nullable DatedOperation step(DatedVisit visit, Step step) {
        return visit.operations().stream()
                .filter(o -> o.meaning().step() == step)
                .findFirst()
                .orElse(null);
    }

    private void promises() {
        Map<OperationName, DatedOperation> byName = new HashMap<>();
        season.operations().forEach(o -> {
            if (byName.put(o.meaning().name(), o) != null) {
                add(o, "is there twice");
            }
        });
        Set<OperationName> listed = new HashSet<>();
        season.moved().stream().map(MovedDate::name).forEach(listed::add);
        for (PromisedDate promise : request.promises()) {
            DatedOperation o = byName.get(promise.name());
            boolean kept = o != null && o.from().toLocalDate().equals(promise.date());
            if (!kept && !listed.contains(promise.name())) {
                wrong.add(promise.name() + ": promised for " + promise.date() + ", is not, and is not listed as moved");
            }
            if (!kept && o != null && promise.firm()) {
                add(o, "was promised for certain and moved");
            }
        }
    }

    private void add(DatedOperation o, String what) {
        wrong.add(o.meaning().boatName() + ", " + o.meaning().visit() + ": "
                + o.meaning().operation() + " " + what);
    }
}

package sternwright.season.dated;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import sternwright.season.Bound;
import sternwright.season.arrays.Plans;
import sternwright.season.arrays.SeasonArrays;
import sternwright.season.arrays.Timetable;
import sternwright.season.dated.answer.DatedOperation;
import sternwright.season.dated.answer.DatedSeason;
import sternwright.season.dated.answer.DatedVisit;
import sternwright.season.dated.check.DatedSeasonCheck;
import sternwright.season.dated.make.SeasonOfYard;
import sternwright.season.search.FirstPlan;
import sternwright.yard.resource.CrewMember;
import sternwright.yard.resource.Hoist;
import sternwright.yard.resource.Resources;
import sternwright.yard.resource.StandingClass;
import sternwright.yard.resource.TidalDock;

/** The second judge passes a sound season and names each kind of fault that is planted in it. */
class DatedSeasonCheckTest {
    private final SeasonRequest request = InventedSeason.of(15, 21);
    private final DatedSeason sound = planned(request);

    private static DatedSeason planned(SeasonRequest request) {
        SeasonOfYard season = SeasonOfYard.of(request);
        SeasonArrays a = SeasonArrays.of(season.problem());
        Timetable t = new Timetable(a, 20);
        assertEquals(List.of(), FirstPlan.fill(t, 1));
        return DatedSeason.of(season, Plans.of(a, t.start, "first"), Bound.ZERO);
    }

    private DatedOperation first(Predicate<DatedOperation> which) {
        return sound.operations().stream().filter(which).findFirst().orElseThrow();
    }

    private DatedOperation first(Step step) {
        return first(o -> o.meaning().step() == step && o.meaning().visit().startsWith("winter"));
    }

    private static DatedOperation at(DatedOperation o, LocalDateTime from, LocalDateTime until) {
        return new DatedOperation(
                o.meaning(), from, until, o.quarter(), o.people(), o.hoist(), o.state(), o.daysLate(), o.reason());
    }

    private static DatedOperation days(DatedOperation o, long days) {
        return at(o, o.from().plusDays(days), o.until().plusDays(days));
    }

    private static DatedOperation by(DatedOperation o, List<String> people, String hoist) {
        return new DatedOperation(
                o.meaning(), o.from(), o.until(), o.quarter(), people, hoist, o.state(), o.daysLate(), o.reason());
    }

    /** The sound season with one operation in another form, or in several. */
    private DatedSeason with(DatedOperation was, DatedOperation... others) {
        List<DatedVisit> visits = new ArrayList<>();
        for (DatedVisit v : sound.visits()) {
            List<DatedOperation> operations = new ArrayList<>();
            v.operations().forEach(o -> operations.addAll(o.equals(was) ? List.of(others) : List.of(o)));
            visits.add(new DatedVisit(
                    v.boatId(), v.boatName(), v.visit(), v.placeClass(), v.ashoreFrom(), v.ashoreUntil(), operations));
        }
        return new DatedSeason(
                sound.from(),
                sound.to(),
                sound.weeks(),
                visits,
                sound.cost(),
                sound.bound(),
                sound.gap(),
                sound.how(),
                sound.loads(),
                sound.binds(),
                sound.moved());
    }

    private DatedSeason with(DatedOperation was, UnaryOperator<DatedOperation> how) {
        return with(was, how.apply(was));
    }

    private static void finds(String words, SeasonRequest asked, DatedSeason answer) {
        List<String> wrong = DatedSeasonCheck.of(asked, answer);
        assertTrue(wrong.stream().anyMatch(w -> w.contains(words)), "\"" + words + "\" is not in " + wrong);
    }

    private void finds(String words, DatedSeason answer) {
        finds(words, request, answer);
    }

    private SeasonRequest hoists(UnaryOperator<Hoist> how) {
        Resources r = request.resources();
        return request.resources(
                new Resources(r.hoists().stream().map(how).toList(), r.standing(), r.crew(), r.times(), r.prices()));
    }

    private SeasonRequest promise(DatedOperation o, boolean firm) {
        LocalDate other = o.from().toLocalDate().plusDays(1);
        return request.promising(
                List.of(new PromisedDate(o.meaning().name(), other, 0, request.from(), firm)), List.of());
    }

    @Test
    void aSoundSeasonPasses() {
        assertEquals(List.of(), DatedSeasonCheck.of(request, sound));
    }

    @Test
    void days() {
        DatedOperation wash = first(Step.WASH);
        LocalDate sunday = wash.from().toLocalDate().with(TemporalAdjusters.next(DayOfWeek.SUNDAY));
        finds(
                "a day on which the yard does not work",
                with(wash, o -> at(o, sunday.atTime(8, 0), sunday.atTime(10, 0))));
        finds(
                "before today",
                with(
                        wash,
                        o -> days(o, -(o.from().getDayOfYear() - request.from().getDayOfYear()) - 7)));
        finds("ends before it begins", with(wash, o -> at(o, o.from(), o.from())));
    }

    @Test
    void partsAndOwners() {
        DatedOperation work = first(o -> !o.meaning().works().isEmpty());
        String boat = work.meaning().boatId();
        LocalDate after = work.from().toLocalDate().plusDays(1);
        String rule = work.meaning().works().get(0).inForce().rule().id();
        finds(
                ", before " + after,
                request.dates(List.of(new OwnerDate(boat, OwnerDate.Kind.PART_IN, rule, after, ""))),
                sound);
        DatedOperation lift = first(Step.LIFT);
        LocalDate later = lift.from().toLocalDate().plusDays(1);
        finds(
                ", before " + later,
                request.dates(List.of(new OwnerDate(lift.meaning().boatId(), OwnerDate.Kind.OUT_FROM, "", later, ""))),
                sound);
    }

    @Test
    void orderOfAStay() {
        DatedOperation launch = first(Step.LAUNCH);
        finds("is not over when she is launched", with(launch, o -> days(o, -120)));
        DatedOperation wash = first(Step.WASH);
        finds("is before the lift", with(wash, o -> days(o, -14)));
        finds("is too long after the lift", with(wash, o -> days(o, 14)));
        DatedOperation settled = first(Step.SETTLED);
        DatedOperation herLaunch = first(o -> o.meaning().step() == Step.LAUNCH
                && o.meaning().visit().equals(settled.meaning().visit())
                && o.meaning().boatId().equals(settled.meaning().boatId()));
        finds(
                "working days after the launch",
                with(settled, o -> at(o, herLaunch.until(), herLaunch.until().plusHours(2))));
        finds("is before the launch", with(settled, o -> days(o, -60)));
    }

    @Test
    void worksAndNames() {
        DatedOperation work = first(o -> !o.meaning().works().isEmpty());
        finds("are not each in the season once", with(work));
        finds("is there twice", with(work, work, days(work, 7)));
    }

    @Test
    void promises() {
        DatedOperation launch = first(Step.LAUNCH);
        finds("is not listed as moved", promise(launch, false), sound);
        finds("was promised for certain and moved", promise(launch, true), sound);
    }

    @Test
    void hoistsAndWater() {
        DatedOperation lift = first(Step.LIFT);
        finds("has no hoist", with(lift, o -> by(o, o.people(), "")));
        finds("does not take her", hoists(h -> new Hoist(h.id(), h.name(), 1, 1, h.liftsADay(), h.tidal())), sound);
        finds(
                "has not water enough",
                hoists(h -> new Hoist(
                        h.id(), h.name(), h.maxMassKg(), h.maxBeamM(), h.liftsADay(), new TidalDock(-9, 0.3))),
                sound);
        finds(
                "is lift 1 of",
                hoists(h -> new Hoist(h.id(), h.name(), h.maxMassKg(), h.maxBeamM(), 0, h.tidal())),
                sound);
    }

    @Test
    void people() {
        DatedOperation wash = first(Step.WASH);
        finds("has nobody to do it", with(wash, o -> by(o, List.of(), "")));
        Resources r = request.resources();
        List<CrewMember> sailmakers = r.crew().stream()
                .map(c -> new CrewMember(c.id(), c.name(), Set.of("sails"), c.workingDays(), c.away(), 0, 0))
                .toList();
        finds("has not the skill", request.resources(r.crew(sailmakers)), sound);
        DatedOperation other = first(o -> o.people().size() == 1
                && !o.meaning().boatId().equals(wash.meaning().boatId())
                && o.people().get(0).startsWith("Person"));
        finds("is at the same time as", with(wash, o -> by(at(o, other.from(), other.until()), other.people(), "")));
    }

    @Test
    void places() {
        Resources r = request.resources();
        List<StandingClass> none = r.standing().stream()
                .map(s -> new StandingClass(s.id(), s.name(), s.upToLengthM(), 0))
                .toList();
        finds(
                "places for them",
                request.resources(new Resources(r.hoists(), none, r.crew(), r.times(), r.prices())),
                sound);
    }
}

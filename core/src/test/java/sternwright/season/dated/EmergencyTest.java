package sternwright.season.dated;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import sternwright.boat.Winter;
import sternwright.season.Bound;
import sternwright.season.Cost;
import sternwright.season.SeasonPlan;
import sternwright.season.arrays.Plans;
import sternwright.season.arrays.SeasonArrays;
import sternwright.season.arrays.Timetable;
import sternwright.season.dated.answer.DatedOperation;
import sternwright.season.dated.answer.DatedSeason;
import sternwright.season.dated.check.DatedSeasonCheck;
import sternwright.season.dated.event.AfterEvents;
import sternwright.season.dated.event.SeasonEvent;
import sternwright.season.dated.make.SeasonOfYard;
import sternwright.season.replan.Replanner;
import sternwright.season.search.FirstPlan;

/** A boat is lifted in an emergency only if she is in the water; ashore she is seen to where she stands. */
class EmergencyTest {
    private static final LocalDate WINTER = LocalDate.of(2027, 1, 18);

    private final SeasonRequest request = InventedSeason.of(16, 3);
    private final DatedSeason planned = first(request);

    private static DatedSeason first(SeasonRequest request) {
        SeasonOfYard season = SeasonOfYard.of(request);
        SeasonArrays a = SeasonArrays.of(season.problem());
        Timetable t = new Timetable(a, 20);
        assertEquals(List.of(), FirstPlan.fill(t, 1));
        return DatedSeason.of(season, Plans.of(a, t.start, "first"), Bound.ZERO);
    }

    /** The season on a later day, with an emergency, as it is repaired. */
    private DatedSeason after(LocalDate today, String boat, LocalDate emergency) {
        List<PromisedDate> kept = planned.published(InventedSeason.FROM).stream()
                .map(Published::kept)
                .toList();
        SeasonRequest now = new SeasonRequest(
                request.yard(),
                request.resources(),
                request.tides(),
                request.boats(),
                request.dates(),
                kept.stream().filter(p -> !p.date().isBefore(today)).toList(),
                kept.stream().filter(p -> p.date().isBefore(today)).toList(),
                List.of(),
                request.from(),
                request.to(),
                today);
        SeasonRequest asked = AfterEvents.of(now, List.of(new SeasonEvent.Emergency(boat, emergency)));
        SeasonOfYard season = SeasonOfYard.of(asked);
        Map<OperationName, Integer> at = new HashMap<>();
        kept.forEach(p -> at.put(p.name(), season.time().quarterFrom(p.date()) + p.quarter()));
        List<Integer> starts = season.meanings().stream()
                .map(m -> at.getOrDefault(m.name(), season.time().axis().quarters()))
                .toList();
        SeasonPlan old = new SeasonPlan(starts, new Cost(0, 0, 0, 0, 0, 0), "as published");
        Replanner replanner = new Replanner(season.problem(), old, season.time().quarterFrom(today), List.of());
        DatedSeason dated = DatedSeason.of(season.with(replanner.season()), replanner.plan(), Bound.ZERO);
        assertEquals(List.of(), DatedSeasonCheck.of(asked, dated));
        return dated;
    }

    private static DatedOperation emergencyWork(DatedSeason season, String boat) {
        return only(season, boat, "emergency work");
    }

    private static DatedOperation only(DatedSeason season, String boat, String operation) {
        List<DatedOperation> found = of(season, boat).stream()
                .filter(o -> o.meaning().operation().equals(operation))
                .toList();
        assertEquals(1, found.size(), operation);
        return found.get(0);
    }

    private static List<DatedOperation> of(DatedSeason season, String boat) {
        return season.operations().stream()
                .filter(o -> o.meaning().boatId().equals(boat))
                .toList();
    }

    private static long lifts(DatedSeason season, String boat) {
        return of(season, boat).stream()
                .filter(o -> o.meaning().step() == Step.LIFT)
                .count();
    }

    private List<DatedOperation> winterLifts() {
        List<DatedOperation> lifts = new ArrayList<>(planned.operations().stream()
                .filter(o ->
                        o.meaning().step() == Step.LIFT && o.meaning().visit().startsWith("winter"))
                .toList());
        assertFalse(lifts.isEmpty());
        return lifts;
    }

    @Test
    void aBoatThatStandsAshoreIsSeenToAtHerPlace() {
        for (DatedOperation lift : winterLifts()) {
            String boat = lift.meaning().boatId();
            DatedSeason dated = after(WINTER, boat, WINTER);
            DatedOperation work = emergencyWork(dated, boat);
            assertTrue(
                    work.meaning().visit().startsWith("winter ashore"),
                    work.meaning().visit());
            assertFalse(work.from().toLocalDate().isBefore(WINTER));
            assertFalse(work.until().toLocalDate().isAfter(WINTER.plusDays(6)), work.toString());
            assertEquals(lifts(planned, boat), lifts(dated, boat), "no lift more");
            assertEquals(List.of(), dated.moved(), "in January there is room for it");
        }
    }

    @Test
    void aBoatInTheWaterIsLiftedAndLaunchedAgain() {
        LocalDate summer = LocalDate.of(2027, 6, 14);
        String afloat = request.boats().stream()
                .filter(b -> b.boat().winter() == Winter.ASHORE)
                .findFirst()
                .orElseThrow()
                .boat()
                .id();
        DatedSeason dated = after(summer, afloat, summer);
        DatedOperation work = emergencyWork(dated, afloat);
        assertEquals("emergency " + summer, work.meaning().visit());
        assertEquals(lifts(planned, afloat) + 1, lifts(dated, afloat));
        List<DatedOperation> visit = of(dated, afloat).stream()
                .filter(o -> o.meaning().visit().startsWith("emergency"))
                .toList();
        assertEquals(
                List.of(Step.LIFT, Step.WASH, Step.WORK, Step.LAUNCH),
                visit.stream().map(o -> o.meaning().step()).toList());
    }

    @Test
    void aBoatThatIsToBeLiftedInTheseDaysIsLiftedAtOnceAndStays() {
        DatedOperation lift = winterLifts().stream()
                .max(java.util.Comparator.comparing(DatedOperation::from))
                .orElseThrow();
        LocalDate today = lift.from().toLocalDate().minusDays(4);
        String boat = lift.meaning().boatId();
        DatedSeason dated = after(today, boat, today);
        assertEquals(lifts(planned, boat), lifts(dated, boat), "no lift more");
        DatedOperation now = only(dated, boat, "lift");
        assertTrue(now.from().isBefore(lift.from()), now.toString());
        assertTrue(now.reason().contains("emergency"), now.reason());
        assertTrue(emergencyWork(dated, boat).meaning().visit().startsWith("winter ashore"));
        assertTrue(dated.moved().stream()
                .anyMatch(m -> m.name().equals(lift.meaning().name())
                        && m.was().equals(lift.from().toLocalDate())
                        && m.reason().contains("emergency")));
    }
}

package sternwright.app.desk.today;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import sternwright.app.desk.InventedDesk;
import sternwright.app.desk.today.DayAtYard.DueAtRisk;
import sternwright.app.desk.today.DayAtYard.PartAwaited;
import sternwright.app.desk.today.DayAtYard.PersonDay;
import sternwright.app.desk.today.DayAtYard.Risk;
import sternwright.app.files.SeasonFiles;
import sternwright.app.files.sheet.Sheet;
import sternwright.boat.Boat;
import sternwright.due.DueState;
import sternwright.season.dated.OperationName;
import sternwright.season.dated.OwnerDate;
import sternwright.season.dated.PromisedDate;
import sternwright.season.dated.Published;
import sternwright.yard.resource.HighWater;
import sternwright.yard.resource.TideTable;

class TodayAtYardTest {
    private static final LocalDate DAY = InventedDesk.TODAY;
    private static final List<Boat> BOATS =
            List.copyOf(InventedDesk.yard().boats().values());

    private final List<Published> plan = new ArrayList<>();
    private final List<OwnerDate> dates = new ArrayList<>();
    private final List<PromisedDate> promises = new ArrayList<>();

    @Test
    void jobsStandWithThePeopleWhoDoThem() {
        String person = InventedDesk.season().resources().crew().get(0).name();
        planned(0, "lay-up", DAY.minusDays(1), DAY, person + ", Somebody Else", "");
        planned(1, "lay-up", DAY.plusDays(1), DAY.plusDays(1), person, "");
        planned(2, "work", DAY, DAY, "", "");
        DayAtYard day = day();
        PersonDay first = day.people().get(0);
        assertEquals(person, first.person());
        assertEquals(1, first.jobs().size(), "tomorrow's job is not today's");
        assertEquals(BOATS.get(0).name(), first.jobs().get(0).boat());
        assertEquals(1, of(day, "Somebody Else").jobs().size());
        assertEquals(BOATS.get(2).id(), of(day, "").jobs().get(0).boatId(), "a job without anybody is not lost");
        assertEquals(
                InventedDesk.season().resources().crew().size() + 2,
                day.people().size(),
                "whoever has no job is there to be given one");
    }

    @Test
    void aBoatStandsAshoreFromLiftToLaunch() {
        planned(0, "lift", DAY.minusDays(10), DAY.minusDays(10), "", "the hoist");
        planned(0, "launch", DAY.plusDays(20), DAY.plusDays(20), "", "the hoist");
        planned(1, "lift", DAY.minusDays(10), DAY.minusDays(10), "", "the hoist");
        planned(1, "launch", DAY.minusDays(2), DAY.minusDays(2), "", "the hoist");
        planned(2, "launch", DAY, DAY, "", "the hoist");
        dates.add(new OwnerDate(BOATS.get(2).id(), OwnerDate.Kind.ASHORE_SINCE, "", DAY.minusYears(1), ""));
        DayAtYard day = day();
        assertEquals(
                List.of(BOATS.get(2).id(), BOATS.get(0).id()),
                day.ashore().stream().map(DayAtYard.StandsAshore::boatId).toList());
        assertEquals(DAY.plusDays(20), day.ashore().get(1).launch());
        assertEquals(1, day.hoist().size());
        assertEquals(
                2,
                day.standing().stream().mapToInt(DayAtYard.StandingLoad::boats).sum());
    }

    @Test
    void partsNotHereAndThoseThatComeTooLate() {
        planned(0, "work", DAY.plusDays(3), DAY.plusDays(3), "A", "");
        dates.add(new OwnerDate(BOATS.get(0).id(), OwnerDate.Kind.PART_IN, "no-such-rule", DAY.plusDays(8), "ordered"));
        dates.add(new OwnerDate(BOATS.get(1).id(), OwnerDate.Kind.PART_IN, "no-such-rule", DAY.plusDays(2), ""));
        dates.add(new OwnerDate(BOATS.get(2).id(), OwnerDate.Kind.PART_IN, "no-such-rule", DAY, "here today"));
        List<PartAwaited> parts = day().parts();
        assertEquals(2, parts.size());
        assertTrue(parts.get(0).late());
        assertEquals(DAY.plusDays(3), parts.get(0).neededBy());
        assertFalse(parts.get(1).late());
        assertNull(parts.get(1).neededBy());
    }

    @Test
    void promisesAgainstThePlan() {
        planned(0, "launch", DAY.plusDays(12), DAY.plusDays(12), "", "the hoist");
        planned(1, "launch", DAY.plusDays(4), DAY.plusDays(4), "", "the hoist");
        promise(0, "launch", DAY.plusDays(5));
        promise(1, "lift", DAY.plusDays(6));
        promise(2, "launch", DAY.minusDays(6));
        var risks = day().promises();
        assertEquals(
                List.of(Risk.PLANNED_LATER, Risk.NOT_PLANNED),
                risks.stream().map(r -> r.why()).toList());
        assertEquals(7, risks.get(0).daysLate());
    }

    @Test
    void whatIsPastItsDayIsOneLineABoatSafetyFirst() {
        List<DueAtRisk> risks = day().dues();
        Set<String> boats = InventedDesk.dues().stream()
                .filter(d -> d.state() == DueState.OVERDUE)
                .map(d -> d.boatId())
                .collect(java.util.stream.Collectors.toSet());
        assertFalse(boats.isEmpty());
        assertEquals(boats.size(), risks.size());
        boolean other = false;
        for (DueAtRisk risk : risks) {
            assertTrue(risk.lastSensible().isBefore(DAY));
            assertFalse(other && risk.safety(), "safety items lead");
            other |= !risk.safety();
        }
    }

    @Test
    void highWatersSayHowDeepABoatMayBe() {
        var hoists = InventedDesk.season().resources().hoists();
        long tidal = hoists.stream().filter(h -> h.tidal() != null).count();
        SeasonFiles files = files(new TideTable(List.of(
                new HighWater(DAY.atTime(11, 0), 4.2),
                new HighWater(DAY.plusDays(1).atTime(11, 40), 4.4))));
        var tides = TodayAtYard.of(InventedDesk.yard(), files, InventedDesk.dues(), DAY)
                .tides();
        assertEquals(tidal, tides.size());
        tides.forEach(t -> hoists.stream()
                .filter(h -> h.name().equals(t.hoist()))
                .map(h -> java.util.Objects.requireNonNull(h.tidal()))
                .forEach(d -> assertEquals(4.2, d.heightNeededM(t.draughtM()), 1e-9)));
    }

    private DayAtYard day() {
        return TodayAtYard.of(InventedDesk.yard(), files(TideTable.NONE), InventedDesk.dues(), DAY);
    }

    private SeasonFiles files(TideTable tides) {
        return new SeasonFiles(
                InventedDesk.season().resources(),
                tides,
                dates.stream().map(d -> new Sheet.Row<>(1, d)).toList(),
                promises.stream().map(p -> new Sheet.Row<>(1, p)).toList(),
                List.of(),
                plan);
    }

    private static PersonDay of(DayAtYard day, String person) {
        return day.people().stream()
                .filter(p -> p.person().equals(person))
                .findFirst()
                .orElseThrow();
    }

    private void planned(int boat, String operation, LocalDate from, LocalDate until, String people, String hoist) {
        OperationName name = new OperationName(BOATS.get(boat).id(), "winter ashore 2026/27", operation);
        plan.add(new Published(name, from, 0, until, people, hoist, "", DAY.minusDays(30)));
    }

    private void promise(int boat, String operation, LocalDate date) {
        OperationName name = new OperationName(BOATS.get(boat).id(), "winter ashore 2026/27", operation);
        promises.add(new PromisedDate(name, date, 0, DAY.minusDays(20), false));
    }
}

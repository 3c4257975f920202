package sternwright.season.dated;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import sternwright.season.dated.SeasonFault.Where;
import sternwright.season.dated.make.SeasonFaults;
import sternwright.season.dated.make.SeasonOfYard;
import sternwright.yard.resource.CrewMember;
import sternwright.yard.resource.Hoist;
import sternwright.yard.resource.Resources;
import sternwright.yard.resource.TidalDock;
import sternwright.yard.resource.TideTable;

/** Each thing for which no season can be planned is said with the boat and what to do. */
class SeasonFaultsTest {
    private final SeasonRequest sound = InventedSeason.of(10, 5);
    private final SeasonBoat first = sound.boats().stream()
            .filter(b -> b.boat().winter() == sternwright.boat.Winter.ASHORE)
            .findFirst()
            .orElseThrow();

    @Test
    void nothingIsWrongWithASoundSeason() {
        assertEquals(List.of(), SeasonFaults.of(sound));
    }

    @Test
    void boatHeavierThanEveryHoist() {
        SeasonRequest request = hoists(new Hoist("crane", "Crane", 100, 6, 4, null));
        SeasonFault fault = of(request, first.boat().id());
        assertEquals(Where.BOAT, fault.what());
        assertTrue(fault.found().contains("no hoist takes her: crane takes 100 kg and 6 m beam"), fault.found());
        assertTrue(fault.advice().contains("resources.yaml"), fault.advice());
        assertThrows(IllegalArgumentException.class, () -> SeasonOfYard.of(request));
    }

    @Test
    void nobodyWithASkill() {
        Resources r = sound.resources();
        SeasonRequest request = sound.resources(r.crew(r.crew().stream()
                .map(c -> new CrewMember(c.id(), c.name(), Set.of("yard"), c.workingDays(), c.away(), 0, 0))
                .toList()));
        SeasonFault fault = of(request, first.boat().id());
        assertTrue(fault.found().contains("freeze-protect on " + first.boat().name()), fault.found());
        assertTrue(fault.found().endsWith("nobody of the crew has the skill mechanical"), fault.found());
    }

    @Test
    void windowThatEndsBeforeItBegins() {
        List<OwnerDate> dates = new ArrayList<>();
        dates.add(date(OwnerDate.Kind.OUT_FROM, LocalDate.of(2026, 10, 20)));
        dates.add(date(OwnerDate.Kind.AFLOAT_BY, LocalDate.of(2026, 10, 19)));
        SeasonFault fault = of(sound.dates(dates), first.boat().id());
        assertEquals(Where.DATES, fault.what());
        assertTrue(fault.found().contains("the window ends before it begins"), fault.found());
    }

    @Test
    void twoDatesOfAKindForOneBoat() {
        SeasonFault fault = of(
                sound.dates(List.of(
                        date(OwnerDate.Kind.OUT_FROM, LocalDate.of(2026, 10, 20)),
                        date(OwnerDate.Kind.OUT_FROM, LocalDate.of(2026, 10, 27)))),
                first.boat().id());
        assertEquals(Where.DATES, fault.what());
        assertTrue(fault.found().endsWith("out-from is given as 2026-10-20 and as 2026-10-27"), fault.found());
    }

    @Test
    void twoPeopleOfOneName() {
        Resources r = sound.resources();
        List<CrewMember> crew = new ArrayList<>(r.crew());
        CrewMember one = crew.get(0);
        crew.add(new CrewMember("another", one.name(), one.skills(), one.workingDays(), List.of(), 0, 0));
        SeasonFault fault = of(sound.resources(r.crew(crew)), "");
        assertEquals("two of the crew are called " + one.name(), fault.found());
    }

    @Test
    void tideTableThatLacksAMonth() {
        TideTable gap = new TideTable(sound.tides().highWaters().stream()
                .filter(h -> !YearMonth.from(h.at()).equals(YearMonth.of(2027, 2)))
                .toList());
        SeasonRequest tidal = hoists(new Hoist("slip", "Slip", 90_000, 9, 4, new TidalDock(-1, 0.3)));
        SeasonRequest request = new SeasonRequest(
                tidal.yard(),
                tidal.resources(),
                gap,
                tidal.boats(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                tidal.from(),
                tidal.to(),
                tidal.today());
        SeasonFault fault = of(request, first.boat().id());
        assertEquals(Where.TIDES, fault.what());
        assertTrue(fault.found().endsWith("lacks days in 2027-02"), fault.found());
        assertTrue(fault.advice().startsWith("Add the high waters of 2027-02 to tides.csv"), fault.advice());
    }

    @Test
    void neverWaterEnough() {
        SeasonRequest request = hoists(new Hoist("slip", "Slip", 90_000, 9, 4, new TidalDock(-6, 0.3)));
        assertTrue(of(request, first.boat().id()).found().contains("never water enough"));
    }

    @Test
    void promiseOnADayOff() {
        PromisedDate promise = new PromisedDate(
                new OperationName(first.boat().id(), "winter ashore 2026/27", "launch"),
                LocalDate.of(2027, 4, 4),
                0,
                LocalDate.of(2026, 8, 1),
                false);
        SeasonFault fault =
                of(sound.promising(List.of(promise), List.of()), first.boat().id());
        assertEquals(Where.PROMISES, fault.what());
        assertTrue(fault.found().contains("2027-04-04, on which the yard does not work"), fault.found());
    }

    @Test
    void dateOfABoatThatIsNotThere() {
        OwnerDate date = new OwnerDate("nobody", OwnerDate.Kind.OUT_FROM, "", LocalDate.of(2026, 10, 1), "");
        assertEquals(
                "there is no such boat",
                of(sound.dates(List.of(date)), "nobody").found());
    }

    private OwnerDate date(OwnerDate.Kind kind, LocalDate on) {
        return new OwnerDate(first.boat().id(), kind, "", on, "");
    }

    private SeasonRequest hoists(Hoist hoist) {
        Resources r = sound.resources();
        return sound.resources(new Resources(List.of(hoist), r.standing(), r.crew(), r.times(), r.prices()));
    }

    private static SeasonFault of(SeasonRequest request, String subject) {
        return SeasonFaults.of(request).stream()
                .filter(f -> f.subject().equals(subject))
                .findFirst()
                .orElseThrow();
    }
}

package sternwright.season.dated;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sternwright.season.Bound;
import sternwright.season.SeasonPlan;
import sternwright.season.arrays.Plans;
import sternwright.season.arrays.SeasonArrays;
import sternwright.season.arrays.Timetable;
import sternwright.season.check.SeasonCheck;
import sternwright.season.dated.answer.DatedOperation;
import sternwright.season.dated.answer.DatedSeason;
import sternwright.season.dated.check.DatedSeasonCheck;
import sternwright.season.dated.make.SeasonFaults;
import sternwright.season.dated.make.SeasonOfYard;
import sternwright.season.search.Budget;
import sternwright.season.search.FirstPlan;
import sternwright.season.search.SeasonSearch;
import sternwright.season.search.Watch;

/** Whatever yard is drawn, both judges pass the season, and the yard's own order is kept. */
class DatedSeasonPropertyTest {
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void bothJudgesPassEverySeason(long seed) {
        SeasonRequest request = InventedSeason.of(12 + (int) seed, seed);
        assertEquals(List.of(), SeasonFaults.of(request));
        SeasonOfYard season = SeasonOfYard.of(request);
        SeasonPlan plan = plan(season, seed);
        assertEquals(List.of(), SeasonCheck.of(season.problem(), plan));
        DatedSeason dated = DatedSeason.of(season, plan, Bound.ZERO);
        assertEquals(List.of(), DatedSeasonCheck.of(request, dated));
        assertTrue(dated.operations().stream().allMatch(o -> !o.reason().isBlank()));
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12})
    void keepsWhatWasPublishedWhenNothingHappened(long seed) {
        SeasonRequest request = InventedSeason.of(15, seed);
        SeasonOfYard season = SeasonOfYard.of(request);
        DatedSeason first = DatedSeason.of(season, plan(season, seed), Bound.ZERO);
        List<PromisedDate> promises = first.published(InventedSeason.FROM).stream()
                .map(Published::kept)
                .toList();
        LocalDate today = LocalDate.of(2026, 11, 2);
        SeasonRequest again = new SeasonRequest(
                request.yard(),
                request.resources(),
                request.tides(),
                request.boats(),
                request.dates(),
                promises.stream().filter(p -> !p.date().isBefore(today)).toList(),
                promises.stream().filter(p -> p.date().isBefore(today)).toList(),
                List.of(),
                request.from(),
                request.to(),
                today);
        SeasonOfYard next = SeasonOfYard.of(again);
        SeasonPlan same = Plans.of(SeasonArrays.of(next.problem()), starts(next, first), "kept");
        assertEquals(List.of(), SeasonCheck.of(next.problem(), same));
        assertEquals(0, same.cost().promises());
        DatedSeason dated = DatedSeason.of(next, same, Bound.ZERO);
        assertEquals(List.of(), DatedSeasonCheck.of(again, dated));
        assertEquals(List.of(), dated.moved());
        assertEquals(
                first.published(InventedSeason.FROM).stream()
                        .map(Published::date)
                        .toList(),
                dated.published(InventedSeason.FROM).stream()
                        .map(Published::date)
                        .toList());
    }

    @ParameterizedTest
    @ValueSource(longs = {21, 22})
    void theJudgeCatchesWhatIsPlanted(long seed) {
        SeasonRequest request = InventedSeason.of(15, seed);
        SeasonOfYard season = SeasonOfYard.of(request);
        DatedSeason dated = DatedSeason.of(season, plan(season, seed), Bound.ZERO);
        SeasonRequest noCrew = request.resources(request.resources()
                .crew(request.resources().crew().stream()
                        .map(c -> c.away(new sternwright.yard.resource.Absence(request.from(), request.to(), "gone")))
                        .toList()));
        assertFalse(DatedSeasonCheck.of(noCrew, dated).isEmpty());
        SeasonRequest fewerBoats =
                request.boats(request.boats().subList(1, request.boats().size()));
        assertFalse(DatedSeasonCheck.of(fewerBoats, dated).isEmpty());
        DatedOperation lift = dated.operations().stream()
                .filter(o -> o.meaning().step() == Step.LIFT)
                .findFirst()
                .orElseThrow();
        SeasonRequest hoistDown = request.hoistsDown(request.resources().hoists().stream()
                .map(h -> new SeasonRequest.HoistDown(
                        h.id(),
                        new sternwright.yard.resource.Absence(
                                lift.from().toLocalDate(), lift.from().toLocalDate(), "down")))
                .toList());
        assertFalse(DatedSeasonCheck.of(hoistDown, dated).isEmpty());
        SeasonRequest outLater = request.dates(List.of(new OwnerDate(
                lift.meaning().boatId(),
                OwnerDate.Kind.OUT_FROM,
                "",
                lift.from().toLocalDate().plusDays(1),
                "")));
        assertEquals(
                lift.meaning().visit().startsWith("winter"),
                !DatedSeasonCheck.of(outLater, dated).isEmpty());
    }

    private static int[] starts(SeasonOfYard season, DatedSeason dated) {
        var index = season.index();
        int[] starts = new int[season.meanings().size()];
        dated.published(InventedSeason.FROM)
                .forEach(p ->
                        starts[index.getOrDefault(p.name(), 0)] = season.time().quarterFrom(p.date()) + p.quarter());
        return starts;
    }

    private static SeasonPlan plan(SeasonOfYard season, long seed) {
        SeasonArrays a = SeasonArrays.of(season.problem());
        Timetable t = new Timetable(a, 20);
        List<Integer> out = FirstPlan.fill(t, seed);
        assertEquals(
                List.of(),
                out.stream()
                        .map(i -> season.meanings().get(i).name() + " " + a.earliest[i] + ".." + a.latest[i])
                        .toList());
        SeasonSearch.Settings settings = new SeasonSearch.Settings(seed, 1, 20, 0.2, 20);
        int[] best = new SeasonSearch(a, settings).improve(t.start, Budget.iterations(400), Watch.SILENT);
        return Plans.of(a, best, "test");
    }
}

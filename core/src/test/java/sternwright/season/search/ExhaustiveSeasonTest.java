package sternwright.season.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sternwright.season.Hoist;
import sternwright.season.PlaceClass;
import sternwright.season.SeasonProblem;
import sternwright.season.Technician;
import sternwright.season.Yard;
import sternwright.season.arrays.Plans;
import sternwright.season.arrays.SeasonArrays;
import sternwright.season.arrays.Timetable;
import sternwright.season.bound.AssignmentBound;
import sternwright.season.bound.EasyBound;
import sternwright.season.bound.LagrangianBound;
import sternwright.season.check.SeasonCheck;
import sternwright.season.sample.TinySeason;

/** On yards so small that every plan can be tried, the search finds the best and no bound lies above it. */
class ExhaustiveSeasonTest {
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void searchFindsTheBestAndTheBoundStaysBelow(long seed) {
        SeasonProblem season = TinySeason.of(seed);
        long best = TinySeason.best(season);
        SeasonArrays a = SeasonArrays.of(season);
        Timetable t = new Timetable(a, 20);
        List<Integer> out = FirstPlan.fill(t, seed);
        if (best == TinySeason.IMPOSSIBLE) {
            assertTrue(!out.isEmpty(), "a plan was made of a season that has none");
            return;
        }
        assertEquals(List.of(), out);
        int[] starts = new SeasonSearch(a, new SeasonSearch.Settings(seed, 1, 20, 0.2, 20))
                .improve(t.start, Budget.iterations(4000), Watch.SILENT);
        var plan = Plans.of(a, starts, "searched");
        assertEquals(List.of(), SeasonCheck.of(season, plan));
        assertEquals(best, plan.cost().total());
        assertTrue(EasyBound.of(a).value() <= best);
        LagrangianBound bound = new LagrangianBound(a, best, AssignmentBound.of(a, best), 1);
        for (int step = 0; step < 300; step++) {
            bound.improve(step / 300.0);
            assertTrue(bound.bound().value() <= best, bound.value() + " above the best " + best);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {21, 22, 23, 24, 25, 26, 27, 28})
    void moreNeverMakesTheBestWorse(long seed) {
        SeasonProblem season = TinySeason.of(seed);
        long best = TinySeason.best(season);
        Yard yard = season.yard();
        int extraSkill = new Random(seed).nextInt(2);
        List<Technician> more = new java.util.ArrayList<>(yard.technicians());
        more.add(new Technician("one more", List.of(extraSkill), List.of()));
        assertTrue(TinySeason.best(season.in(yard.technicians(more))) <= best, "one more technician");
        Hoist hoist = yard.hoists().get(0);
        List<Integer> slots =
                hoist.slotsByQuarter().stream().map(slot -> slot + 1).toList();
        Yard faster = yard.hoists(List.of(new Hoist(hoist.name(), slots, hoist.downDays())));
        assertTrue(TinySeason.best(season.in(faster)) <= best, "one more lift");
        PlaceClass place = yard.placeClasses().get(0);
        Yard longer = yard.places(List.of(new PlaceClass(place.name(), place.places() + 1)));
        assertTrue(TinySeason.best(season.in(longer)) <= best, "one more place");
        SeasonProblem wider = season.operations(season.operations().stream()
                .map(o -> o.within(Math.max(0, o.earliestQ() - 1), o.latestEndQ()))
                .toList());
        assertTrue(TinySeason.best(wider) <= best, "a wider window");
    }
}

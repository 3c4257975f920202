package sternwright.season.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sternwright.season.SeasonPlan;
import sternwright.season.SeasonProblem;
import sternwright.season.arrays.Plans;
import sternwright.season.arrays.SeasonArrays;
import sternwright.season.arrays.Timetable;
import sternwright.season.sample.GeneratedSeason;
import sternwright.season.sample.RandomSeason;
import sternwright.season.search.Budget;
import sternwright.season.search.FirstPlan;
import sternwright.season.search.SeasonSearch;
import sternwright.season.search.Watch;

/** Every plan of a few hundred random seasons passes the judge, and searching never makes one worse. */
class SeasonCheckPropertyTest {
    static LongStream seeds() {
        return LongStream.range(0, 300);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void everyPlanIsProved(long seed) {
        SeasonProblem season = RandomSeason.of(3 + (int) (seed % 12), 4 + (int) (seed % 5), seed);
        SeasonArrays a = SeasonArrays.of(season);
        Timetable t = new Timetable(a, 20);
        List<Integer> out = FirstPlan.fill(t, seed);
        Assumptions.assumeTrue(out.isEmpty(), "this season finds no first plan");
        SeasonPlan first = Plans.of(a, t.start, "first");
        assertEquals(List.of(), SeasonCheck.of(season, first));
        int[] starts = new SeasonSearch(a, SeasonSearch.Settings.fresh(seed))
                .improve(t.start, Budget.iterations(300), Watch.SILENT);
        SeasonPlan better = Plans.of(a, starts, "searched");
        assertEquals(List.of(), SeasonCheck.of(season, better));
        assertTrue(better.cost().total() <= first.cost().total());
    }

    @Test
    void nearlyAllRandomSeasonsFindAFirstPlan() {
        long found = seeds().filter(seed -> {
                    SeasonArrays a =
                            SeasonArrays.of(RandomSeason.of(3 + (int) (seed % 12), 4 + (int) (seed % 5), seed));
                    return FirstPlan.fill(new Timetable(a, 20), seed).isEmpty();
                })
                .count();
        assertTrue(found >= 270, found + " of 300 seasons were planned");
    }

    @Test
    void aYardOf300BoatsIsProved() {
        SeasonProblem season = GeneratedSeason.of(300, 1);
        SeasonArrays a = SeasonArrays.of(season);
        Timetable t = new Timetable(a, 20);
        assertEquals(List.of(), FirstPlan.fill(t, 1));
        int[] once = new SeasonSearch(a, SeasonSearch.Settings.fresh(5))
                .improve(t.start, Budget.iterations(1500), Watch.SILENT);
        int[] twice = new SeasonSearch(a, SeasonSearch.Settings.fresh(5))
                .improve(t.start, Budget.iterations(1500), Watch.SILENT);
        SeasonPlan plan = Plans.of(a, once, "searched");
        assertEquals(List.of(), SeasonCheck.of(season, plan));
        assertEquals(plan, Plans.of(a, twice, "searched"), "the same seed gives the same plan");
    }
}

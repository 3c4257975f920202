package sternwright.season.exact;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sternwright.season.SeasonPlan;
import sternwright.season.SeasonProblem;
import sternwright.season.arrays.Plans;
import sternwright.season.arrays.SeasonArrays;
import sternwright.season.arrays.Timetable;
import sternwright.season.check.SeasonCheck;
import sternwright.season.sample.TinySeason;
import sternwright.season.search.FirstPlan;

/** The exact model agrees with trying every plan of a tiny yard. */
class ExactSeasonTest {
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void findsTheBestOfATinyYard(long seed) {
        SeasonProblem season = TinySeason.of(seed);
        SeasonArrays a = SeasonArrays.of(season);
        Timetable t = new Timetable(a, 0);
        long best = TinySeason.best(season);
        if (!FirstPlan.fill(t, 1).isEmpty()) {
            assertEquals(
                    ExactSeason.Outcome.NONE, new ExactSeason(a).feasible(20, 1).outcome());
            assertEquals(TinySeason.IMPOSSIBLE, best);
            return;
        }
        ExactSeason exact = new ExactSeason(a);
        ExactSeason.Answer answer = exact.best(Plans.of(a, t.start, "first"), 20, 1, (cost, bound) -> {});
        assertEquals(ExactSeason.Outcome.OPTIMAL, answer.outcome());
        SeasonPlan plan = exact.plan(answer);
        assertEquals(List.of(), SeasonCheck.of(season, plan));
        assertEquals(best, plan.cost().total());
    }
}

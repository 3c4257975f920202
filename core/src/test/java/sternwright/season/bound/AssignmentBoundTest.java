package sternwright.season.bound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import sternwright.season.arrays.SeasonArrays;
import sternwright.season.sample.GeneratedSeason;
import sternwright.season.sample.TinySeason;

/** The launches as a flow: the value agreed for the generated season, and never above the best plan. */
class AssignmentBoundTest {
    @Test
    void launchesAndFrostOfThreeHundredBoats() {
        SeasonArrays a = SeasonArrays.of(GeneratedSeason.of(300, 1));
        assertEquals(472 + 144, AssignmentBound.of(a, 1200).value());
    }

    @Test
    void neverAboveTheBestAndNeverBelowTheEasyOne() {
        for (long seed = 1; seed <= 12; seed++) {
            SeasonArrays a = SeasonArrays.of(TinySeason.of(seed));
            long best = TinySeason.best(a.problem);
            if (best != TinySeason.IMPOSSIBLE) {
                long bound = AssignmentBound.of(a, best).value();
                assertTrue(bound <= best, "seed " + seed + ": " + bound + " above " + best);
                assertTrue(bound >= EasyBound.of(a).value());
            }
        }
    }
}

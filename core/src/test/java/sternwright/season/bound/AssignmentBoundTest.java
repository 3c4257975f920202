package sternwright.season.bound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.util.Collections;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sternwright.season.SeasonProblem;
import sternwright.season.Weights;
import sternwright.season.arrays.SeasonArrays;
import sternwright.season.sample.GeneratedSeason;
import sternwright.season.sample.TinySeason;

/** The launches as a flow: the value agreed for the generated season, and never above the best plan. */
class AssignmentBoundTest {
    @Test
    void launchesAndFrostOfThreeHundredBoats() {
        SeasonArrays a = SeasonArrays.of(GeneratedSeason.of(300, 1));
        assertEquals(472 + 144, AssignmentBound.of(a, 1200).bound().value());
    }

    @Test
    void neverAboveTheBestAndNeverBelowTheEasyOne() {
        for (long seed = 1; seed <= 12; seed++) {
            SeasonArrays a = SeasonArrays.of(TinySeason.of(seed));
            long best = TinySeason.best(a.problem);
            if (best != TinySeason.IMPOSSIBLE) {
                long bound = AssignmentBound.of(a, best).bound().value();
                assertTrue(bound <= best, "seed " + seed + ": " + bound + " above " + best);
                assertTrue(bound >= EasyBound.of(a).value());
            }
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void visitsPricedWithTheSlotPricesOfTheFlowProveAtLeastAsMuch(long seed) {
        SeasonArrays a = SeasonArrays.of(GeneratedSeason.of(120, seed));
        AssignmentBound launches = AssignmentBound.of(a, 20_000);
        LagrangianBound priced = new LagrangianBound(a, 20_000, launches, 1);
        priced.improve(0);
        assertTrue(priced.value() >= launches.bound().value(), priced.value() + " below " + launches.bound());
    }

    /** Tiny yards whose hoist lifts one boat in a quarter and whose launches are dated: slots are what is short. */
    @ParameterizedTest
    @ValueSource(longs = {41, 42, 43, 44, 45, 46, 47, 48, 49, 50, 51, 52})
    void pricedFromTheFlowNeverAboveTheBestOfTinyYards(long seed) {
        SeasonProblem season = TinySeason.of(seed);
        long best = TinySeason.best(season);
        assumeTrue(best != TinySeason.IMPOSSIBLE, "no plan at all");
        SeasonArrays a = SeasonArrays.of(season);
        for (long upper : new long[] {best, 2 * best + 10, 1_000}) {
            LagrangianBound bound = new LagrangianBound(a, upper, AssignmentBound.of(a, upper), 1);
            for (int step = 0; step < 40; step++) {
                bound.improve(step / 40.0);
            }
            assertTrue(bound.bound().value() <= best, bound.bound() + " above the best " + best);
        }
    }

    /** Extra hands that cost next to nothing, or that there are none of: prices of people rise beyond what an extra hand costs. */
    @ParameterizedTest
    @ValueSource(longs = {61, 62, 63, 64, 65, 66, 67, 68})
    void neverAboveTheBestWhereHandsAreShort(long seed) {
        SeasonProblem tiny = TinySeason.of(seed);
        for (int extra = 0; extra < 2; extra++) {
            SeasonProblem season = new SeasonProblem(
                    tiny.yard()
                            .extraHands(Collections.nCopies(tiny.yard().axis().weeks(), extra)),
                    tiny.visits(),
                    tiny.halves(),
                    tiny.operations(),
                    tiny.lags(),
                    tiny.stays(),
                    tiny.promises(),
                    new Weights(1, 1, 40, 2));
            long best = TinySeason.best(season);
            if (best == TinySeason.IMPOSSIBLE) {
                continue;
            }
            SeasonArrays a = SeasonArrays.of(season);
            LagrangianBound bound = new LagrangianBound(a, best, AssignmentBound.of(a, best), 1);
            for (int step = 0; step < 100; step++) {
                bound.improve(step / 100.0);
            }
            assertTrue(bound.bound().value() <= best, bound.bound() + " above the best " + best);
        }
    }
}

package sternwright.season.sample;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sternwright.season.SeasonProblem;
import sternwright.season.arrays.SeasonArrays;

/** The generated seasons are the same everywhere, so that measurements can be compared. */
class GeneratedSeasonTest {
    @ParameterizedTest
    @CsvSource({"300, 2012, 367, 144", "1000, 6457, 1202, 240", "3000, 19388, 3619, 536"})
    void hasTheAgreedSizeAndUnavoidableFrost(int boats, int operations, int visits, int frost) {
        SeasonProblem season = GeneratedSeason.of(boats, 1);
        assertEquals(operations, season.operations().size());
        assertEquals(visits, season.visits().size());
        SeasonArrays a = SeasonArrays.of(season);
        int unavoidable = 0;
        for (int i = 0; i < a.n; i++) {
            unavoidable += a.frost(i) ? a.dueCost(i, a.earliest[i]) : 0;
        }
        assertEquals(frost, unavoidable);
    }
}

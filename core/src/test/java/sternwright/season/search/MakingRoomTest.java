package sternwright.season.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sternwright.season.arrays.Plans;
import sternwright.season.arrays.SeasonArrays;
import sternwright.season.arrays.Timetable;
import sternwright.season.check.SeasonCheck;
import sternwright.season.sample.RandomSeason;

/** Tight seasons in which boats in the order of their dates leave one without room, though there is a plan. */
class MakingRoomTest {
    @ParameterizedTest
    @ValueSource(longs = {239, 883, 1141, 1194, 1436})
    void findsThePlanThatTheListMisses(long seed) {
        int small = (int) seed;
        var season = RandomSeason.of(3 + small % 17, 4 + small % 7, seed);
        SeasonArrays a = SeasonArrays.of(season);
        assertFalse(
                FirstPlan.fill(new Timetable(a, 20), seed, 8).isEmpty(),
                "the list alone finds it: no test of making room");
        Timetable t = new Timetable(a, 20);
        assertEquals(List.of(), FirstPlan.fill(t, seed));
        assertEquals(List.of(), SeasonCheck.of(season, Plans.of(a, t.start, "room made")));
    }
}

package sternwright.yard;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.time.YearMonth;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where a boat that is hauled every winter is presumed to be, in both hemispheres. */
class WinterStayTest {
    private static WinterStay stay(boolean south) {
        return new WinterStay(south ? SeasonDates.SOUTHERN : SeasonDates.NORTHERN);
    }

    @ParameterizedTest
    @CsvSource({
        "false, 2026-09, false, false",
        "false, 2026-10, true, true",
        "false, 2027-01, true, false",
        "false, 2027-04, true, true",
        "false, 2027-05, false, false",
        "true, 2026-03, false, false",
        "true, 2026-04, true, true",
        "true, 2026-07, true, false",
        "true, 2026-10, true, true",
        "true, 2026-11, false, false"
    })
    void byCustomShesHauledAndLaunchedInTheMiddle(boolean south, YearMonth month, boolean ashore, boolean end) {
        assertEquals(ashore, stay(south).ashore(month));
        assertEquals(end, stay(south).atEitherEnd(month));
    }

    @ParameterizedTest
    @CsvSource({
        "2026-11-25, 2026-11, true",
        "2026-09-02, 2026-09, false",
        "2026-09-02, 2026-11, true",
        "2026-12-05, 2026-12, false",
        "2027-05-20, 2027-05, true",
        "2027-05-20, 2027-06, false",
        "2026-07-01, 2026-10, false"
    })
    void whileTheHalfRunsHaulingOrLaunchingMayBeToCome(LocalDate day, YearMonth month, boolean toCome) {
        assertEquals(toCome, stay(false).stillToCome(day, month));
    }

    @ParameterizedTest
    @CsvSource({"2026-11-30, false", "2026-12-01, true", "2027-05-31, true", "2027-06-01, false", "2027-09-15, false"})
    void afterTheLastDayOfLayUpNoHaulOutIsToCome(LocalDate day, boolean hauled) {
        assertEquals(hauled, stay(false).hauledBefore(day));
    }
}

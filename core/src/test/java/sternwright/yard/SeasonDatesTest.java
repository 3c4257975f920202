package sternwright.yard;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.MonthDay;
import org.junit.jupiter.api.Test;

class SeasonDatesTest {
    private static SeasonDates halves(MonthDay layUpTo, MonthDay recommissionFrom) {
        return new SeasonDates(MonthDay.of(10, 1), layUpTo, recommissionFrom, MonthDay.of(5, 31));
    }

    @Test
    void halvesThatShareADayAreFoundAcrossNewYearToo() {
        assertFalse(SeasonDates.NORTHERN.overlap());
        assertFalse(SeasonDates.SOUTHERN.overlap());
        assertFalse(halves(MonthDay.of(1, 15), MonthDay.of(1, 16)).overlap());
        assertTrue(halves(MonthDay.of(1, 15), MonthDay.of(1, 15)).overlap());
        assertFalse(halves(MonthDay.of(2, 28), MonthDay.of(2, 29)).overlap());
        assertTrue(halves(MonthDay.of(2, 29), MonthDay.of(2, 29)).overlap());
    }
}

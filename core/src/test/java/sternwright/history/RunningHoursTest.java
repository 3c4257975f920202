package sternwright.history;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class RunningHoursTest {
    private static MeterReading at(String date, double hours) {
        return MeterReading.of(LocalDate.parse(date), "main", hours);
    }

    private static double last(RunningHours hours) {
        return hours.latest().orElseThrow().hours();
    }

    @Test
    void aNotedReplacementGoesOnCounting() {
        RunningHours hours = RunningHours.of(List.of(
                at("2020-05-01", 1000),
                new MeterReading(LocalDate.of(2022, 5, 1), "main", 1300, 20.0, "yard"),
                at("2023-05-01", 120)));
        assertEquals(1400, last(hours));
        assertTrue(hours.remarks().isEmpty());
    }

    @Test
    void aSlipIsPassedOverAndSaid() {
        RunningHours hours = RunningHours.of(List.of(
                at("2020-05-01", 1000), at("2021-05-01", 11000), at("2022-05-01", 1200), at("2023-05-01", 1300)));
        assertEquals(1300, last(hours));
        assertEquals(1, hours.remarks().size());
        assertTrue(hours.remarks().get(0).text().contains("11000 h"));
    }

    @Test
    void aMeterThatFellAndStayedLowIsTakenForANewOne() {
        RunningHours hours = RunningHours.of(
                List.of(at("2020-05-01", 1000), at("2021-05-01", 1200), at("2022-05-01", 80), at("2023-05-01", 180)));
        assertEquals(1380, last(hours));
        assertTrue(hours.remarks().get(0).text().contains("new meter"));
    }

    @Test
    void moreThanTwentyFourHoursADayIsASlip() {
        RunningHours hours =
                RunningHours.of(List.of(at("2020-05-01", 100), at("2020-05-02", 190), at("2021-05-01", 200)));
        assertEquals(1, hours.remarks().size());
    }

    @Test
    void twoSlipsTenfoldAreNoOldMeter() {
        RunningHours hours = RunningHours.of(List.of(
                at("2019-09-11", 3909),
                at("2020-05-08", 4398),
                at("2020-05-08", 43980),
                at("2020-09-16", 4649),
                at("2020-09-16", 46490),
                at("2021-10-05", 5451),
                at("2022-03-28", 5870)));
        assertEquals(5870, hours.latest().orElseThrow().hours());
        assertEquals(2, hours.remarks().size(), hours.remarks()::toString);
    }

    @Test
    void aDigitTooManyWaitsForASecondReading() {
        List<MeterReading> readings =
                new ArrayList<>(List.of(at("2024-05-01", 160), at("2025-04-20", 382), at("2025-11-20", 5040)));
        RunningHours hours = RunningHours.of(readings);
        assertEquals(382, last(hours));
        assertEquals(1, hours.remarks().size());
        String said = hours.remarks().get(0).text();
        assertTrue(said.contains("5040 h means 22 h a day since 2025-04-20, after 0.6 h a day before"), said);
        assertTrue(said.contains("with one digit less it is 504 h"), said);

        readings.add(at("2025-11-20", 5040));
        assertEquals(5040, last(RunningHours.of(readings)));
        assertTrue(RunningHours.of(readings).remarks().isEmpty());
    }

    @Test
    void aSecondReadingMoreThanHalfOfDayAndNightAfterTheFirstWaitsToo() {
        RunningHours hours = RunningHours.of(List.of(at("2026-03-30", 382), at("2026-10-29", 5040)));
        assertEquals(382, last(hours));
        String said = hours.remarks().get(0).text();
        assertTrue(said.contains("5040 h means 22 h a day since 2026-03-30; with one digit less it is 504 h"), said);
        assertEquals(2000, last(RunningHours.of(List.of(at("2026-03-30", 382), at("2026-10-29", 2000)))));
    }

    @Test
    void aBoatThatAlwaysRunsMuchLeapsNot() {
        RunningHours hours =
                RunningHours.of(List.of(at("2024-01-01", 0), at("2025-01-01", 3000), at("2025-07-01", 5600)));
        assertEquals(5600, last(hours));
        assertTrue(hours.remarks().isEmpty());
    }

    @Test
    void theLastFigureOfAReplacedMeterStands() {
        RunningHours hours = RunningHours.of(List.of(
                at("2024-05-01", 160),
                at("2025-04-20", 382),
                new MeterReading(LocalDate.of(2025, 11, 20), "main", 5040, 0.0, "yard")));
        assertEquals(5040, last(hours));
    }

    static IntStream seeds() {
        return IntStream.range(0, 100);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void hoursNeverFallWhateverTheReadings(int seed) {
        Random random = new Random(seed);
        List<MeterReading> readings = new ArrayList<>();
        for (int i = 0; i < 3 + random.nextInt(20); i++) {
            LocalDate date = LocalDate.of(2015, 1, 1).plusDays(random.nextInt(4000));
            boolean change = random.nextInt(8) == 0;
            readings.add(new MeterReading(
                    date, "main", random.nextInt(3000), change ? (Double) (double) random.nextInt(20) : null, ""));
        }
        double before = Double.NEGATIVE_INFINITY;
        for (RunningHours.Point p : RunningHours.of(readings).points()) {
            assertTrue(p.hours() >= before, readings::toString);
            before = p.hours();
        }
    }
}

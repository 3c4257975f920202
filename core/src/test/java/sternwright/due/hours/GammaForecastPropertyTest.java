package sternwright.due.hours;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sternwright.history.MeterReading;
import sternwright.history.RunningHours;
import sternwright.measure.MonthlyShare;
import sternwright.yard.Use;

/** The hours forecast: its quantiles hold what they promise, and it learns from the meter. */
class GammaForecastPropertyTest {
    private static final MonthlyShare SUMMER =
            new MonthlyShare(List.of(.01, .01, .03, .08, .13, .17, .20, .19, .11, .05, .01, .01));
    private static final LocalDate START = LocalDate.of(2026, 1, 1);

    static IntStream seeds() {
        return IntStream.range(0, 200);
    }

    private static GammaForecast forecast(Random random) {
        Use use = new Use("u", "u", 30 + random.nextInt(400), 0.2 + random.nextDouble(), SUMMER, false);
        double rate = 20 + random.nextInt(500);
        List<MeterReading> readings = IntStream.rangeClosed(0, random.nextInt(6))
                .mapToObj(y -> MeterReading.of(START.minusYears(6L - y), "main", y * rate))
                .toList();
        return new GammaForecast(use, SUMMER, RunningHours.of(readings));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void chanceRisesWithTimeAndFallsWithHours(int seed) {
        Random random = new Random(seed);
        GammaForecast forecast = forecast(random);
        double hours = 10 + random.nextInt(1000);
        double years = 0.05 + 10 * random.nextDouble();
        double chance = forecast.chance(hours, years);
        assertTrue(chance >= 0 && chance <= 1);
        assertTrue(forecast.chance(hours, years * 1.1) >= chance);
        assertTrue(forecast.chance(hours * 1.1, years) <= chance);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void quantilesAreInOrderAndHitTheirChance(int seed) {
        Random random = new Random(seed);
        GammaForecast forecast = forecast(random);
        double hours = 10 + random.nextInt(1000);
        HoursForecast.Range range = forecast.reach(START, hours);
        assertFalse(range.median().isBefore(range.early80()));
        assertFalse(range.late80().isBefore(range.median()));
        double years = SUMMER.between(START, range.median());
        if (years > 0.2 && years < 50) {
            assertEquals(0.5, forecast.chance(hours, years), 0.08, "dates are whole days, June days weigh most");
        }
    }

    /** The quick quantiles against a plain bisection of the exact chance. */
    @ParameterizedTest
    @MethodSource("seeds")
    void quantilesAreExactToTwoPartsInAThousandOrAThirdOfADay(int seed) {
        Random random = new Random(seed);
        GammaForecast forecast = forecast(random);
        double hours = 5 + random.nextInt(1500);
        double[] found = forecast.quantiles(hours);
        double[] chances = {0.1, 0.5, 0.9};
        for (int i = 0; i < 3; i++) {
            double low = 1e-6;
            double high = 60;
            for (int k = 0; k < 60; k++) {
                double middle = Math.sqrt(low * high);
                if (forecast.chance(hours, middle) < chances[i]) {
                    low = middle;
                } else {
                    high = middle;
                }
            }
            assertEquals(low, found[i], 2e-3 * low + 1e-3, "chance " + chances[i] + ", a third of a day allowed");
        }
    }

    /** Read off the grid against the exact equation, over levels from a hundredth to a hundred scales and all shapes. */
    @ParameterizedTest
    @MethodSource("seeds")
    void theGridIsExactToHalfAPartInAThousand(int seed) {
        Random random = new Random(seed);
        GammaQuantiles quantiles = new GammaQuantiles(GammaForecast.SHAPE_PER_YEAR);
        double level = Math.exp(-4.6 + 9.2 * random.nextDouble());
        double shape = Math.exp(0.7 + 6 * random.nextDouble());
        double[] read = quantiles.years(level, shape);
        double[] exact = quantiles.exact(level, shape);
        for (int k = 0; k < 3; k++) {
            assertEquals(0, Math.log(read[k] / exact[k]), 5e-4, level + " " + shape + " quantile " + k);
        }
    }

    /** Judge: plain simulation of the same process, rate from the prior, no formula shared. */
    @Test
    void rangeAgreesWithSimulation() {
        double mean = 120;
        double variation = 0.5;
        Use use = new Use("u", "u", mean, variation, SUMMER, false);
        GammaForecast forecast = new GammaForecast(use, SUMMER, RunningHours.of(List.of()));
        Random random = new Random(42);
        double a = 2 + 1 / (variation * variation);
        double b = mean * (a - 1) / GammaForecast.SHAPE_PER_YEAR;
        int reached = 0;
        int runs = 40_000;
        for (int i = 0; i < runs; i++) {
            double rate = gamma(random, a) / b;
            double twoYears = gamma(random, 2 * GammaForecast.SHAPE_PER_YEAR) / rate;
            reached += twoYears >= 200 ? 1 : 0;
        }
        assertEquals((double) reached / runs, forecast.chance(200, 2), 0.01);
    }

    @Test
    void aBusyMeterBringsTheDateForward() {
        Use use = new Use("u", "u", 100, 0.5, SUMMER, false);
        RunningHours busy = RunningHours.of(
                List.of(MeterReading.of(START.minusYears(3), "main", 0), MeterReading.of(START, "main", 900)));
        GammaForecast prior = new GammaForecast(use, SUMMER, RunningHours.of(List.of()));
        GammaForecast learnt = new GammaForecast(use, SUMMER, busy);
        assertTrue(learnt.reach(START, 200)
                .median()
                .isBefore(prior.reach(START, 200).median()));
        assertEquals(255, learnt.annualHours(), 30, "between the yard's 100 and the meter's 300, nearer to the meter");
    }

    /** Sum of exponentials for the whole part of the shape is enough here: shapes are whole numbers. */
    private static double gamma(Random random, double shape) {
        double sum = 0;
        for (int i = 0; i < Math.round(shape); i++) {
            sum -= Math.log(1 - random.nextDouble());
        }
        return sum;
    }
}

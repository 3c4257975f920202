package sternwright.job.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import sternwright.finding.Severity;
import sternwright.history.TakenReading;
import sternwright.job.RuleOf;
import sternwright.service.ReadingAsked;
import sternwright.service.Rule;
import sternwright.service.Trigger;

class ReadingJudgeTest {
    private static final Rule PLAIN = RuleOf.rule("r", "measure").build();

    @ParameterizedTest
    @CsvSource({
        "90, FINE, INSIDE", // well above
        "56, FINE, INSIDE",
        "55, FINE, INSIDE", // a tenth of 50 is 5: 55 is just outside the guard
        "54.9, WATCH, NEAR_LIMIT",
        "50, WATCH, NEAR_LIMIT", // the limit itself is good
        "49.9, ACT, OUTSIDE"
    })
    void atLeastFifty(double value, Severity severity, Judgement.Grounds grounds) {
        Judgement j = judge(50.0, null, "%", value, null, PLAIN);
        assertEquals(severity, j.severity());
        assertEquals(grounds, j.grounds());
    }

    @ParameterizedTest
    @CsvSource({"-30, FINE", "-25, WATCH", "-26, WATCH", "-27.5, FINE", "-24.9, ACT"})
    void freezePointAtMostMinusTwentyFive(double value, Severity severity) {
        assertEquals(severity, judge(null, -25.0, "°C", value, null, PLAIN).severity());
    }

    @ParameterizedTest
    @CsvSource({"10, WATCH", "10.9, WATCH", "11, FINE", "19, FINE", "19.1, WATCH", "20, WATCH", "20.1, ACT", "9.9, ACT"
    })
    void aBandIsWatchedInItsOuterTenths(double value, Severity severity) {
        assertEquals(severity, judge(10.0, 20.0, "mm", value, null, PLAIN).severity());
    }

    @Test
    void asMuchChangeAgainWouldPassTheLimit() {
        Judgement j = judge(50.0, null, "%", 68, 88.0, PLAIN);
        assertEquals(Severity.WATCH, j.severity());
        assertEquals(Judgement.Grounds.DRIFTING, j.grounds());
        assertEquals("68 % after 88 %: as much change again and it is no longer at least 50 %.", j.why());
        assertEquals(Severity.FINE, judge(50.0, null, "%", 70, 88.0, PLAIN).severity());
    }

    @Test
    void aSafetyItemOutsideIsUnsafe() {
        Rule safety = RuleOf.rule("r", "measure").safety().build();
        Judgement j = judge(1.0, null, "1", 0, null, safety);
        assertEquals(Severity.UNSAFE, j.severity());
        assertTrue(j.why().startsWith("no, should be yes."));
        assertEquals(Severity.FINE, judge(1.0, null, "1", 1, null, safety).severity());
    }

    @Test
    void aFindingThatPullsATriggerIsActedOnEvenInsideTheLimits() {
        Rule half = RuleOf.rule("r", "measure")
                .trigger(new Trigger("x", 50.0, null, "at half gone the anode is renewed"))
                .build();
        Judgement j = judge(40.0, null, "%", 50, null, half);
        assertEquals(Severity.ACT, j.severity());
        assertEquals("50 %: at half gone the anode is renewed", j.why());
    }

    @Test
    void withoutLimitsItIsOnlyNoted() {
        assertEquals(
                Judgement.Grounds.NO_LIMIT,
                judge(null, null, "L", 4.2, 9.0, PLAIN).grounds());
    }

    @Test
    void theSourceOfTheLimitGoesWithTheVerdict() {
        assertSame(RuleOf.PRACTICE, judge(1.0, 2.0, "mm", 5, null, PLAIN).source());
    }

    @Test
    void whatCannotBeJudgedIsRefusedWithAdvice() {
        ReadingAsked asked = new ReadingAsked("x", "x", "mm", 1.0, 2.0, RuleOf.PRACTICE);
        assertTrue(refusal(asked, new TakenReading("x", 1, "thou")).contains("convert it first"));
        assertTrue(refusal(asked, new TakenReading("y", 1, "mm")).contains("expected \"x\""));
        assertTrue(refusal(asked, new TakenReading("x", Double.NaN, "mm")).contains("measure again"));
        ReadingAsked yes = new ReadingAsked("x", "x", "1", 1.0, null, RuleOf.PRACTICE);
        assertTrue(refusal(yes, new TakenReading("x", 0.5, "1")).contains("1 for yes"));
    }

    @Test
    void limitsInWords() {
        assertEquals("at most 12.5 mV", words(null, 12.5, "mV"));
        assertEquals("at least 50 %", words(50.0, null, "%"));
        assertEquals("20 to 25 °C", words(20.0, 25.0, "°C"));
        assertEquals("0 pcs", words(0.0, 0.0, "pcs"));
        assertEquals("yes", words(1.0, null, "1"));
        assertEquals("no", words(null, 0.0, "1"));
        assertEquals("no limit given", words(null, null, "L"));
    }

    /** Going outwards from the middle of a band the verdict never gets milder, and it acts exactly outside. */
    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14, 15})
    void verdictsOnlyGetWorseOutwards(long seed) {
        Random random = new Random(seed);
        double low = random.nextDouble(-100, 100);
        double high = low + random.nextDouble(0.5, 50);
        Severity last = Severity.FINE;
        for (double share = 0; share <= 1.2; share += 0.01) {
            double value = (low + high) / 2 + share * (high - low) / 2;
            Severity now = judge(low, high, "mm", value, null, PLAIN).severity();
            assertTrue(now.compareTo(last) >= 0, "milder at " + value);
            assertEquals(value > high, now == Severity.ACT);
            last = now;
        }
    }

    private static String words(@Nullable Double low, @Nullable Double high, String unit) {
        return Limits.words(new ReadingAsked("x", "x", unit, low, high, RuleOf.PRACTICE));
    }

    private static String refusal(ReadingAsked asked, TakenReading taken) {
        return String.valueOf(
                assertThrows(IllegalArgumentException.class, () -> ReadingJudge.judge(asked, taken, null, PLAIN))
                        .getMessage());
    }

    private static Judgement judge(
            @Nullable Double low,
            @Nullable Double high,
            String unit,
            double value,
            @Nullable Double before,
            Rule rule) {
        ReadingAsked asked = new ReadingAsked("x", "x", unit, low, high, RuleOf.PRACTICE);
        TakenReading was = before == null ? null : new TakenReading("x", before, unit);
        return ReadingJudge.judge(asked, new TakenReading("x", value, unit), was, rule);
    }
}

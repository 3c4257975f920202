package sternwright.measure.unit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Factors against NIST Special Publication 811 (2008 edition), appendix B.8, printed there to seven digits, bold where exact.
 */
class UnitReferenceTest {
    @ParameterizedTest
    @CsvSource({
        "PSI, KILOPASCAL, 6.894757", // pound-force per square inch
        "BAR, KILOPASCAL, 100", // bar
        "US_GALLON, LITRE, 3.785412", // gallon (U.S.)
        "UK_GALLON, LITRE, 4.54609", // gallon (Imperial)
        "THOU, MILLIMETRE, 0.0254", // mil (0.001 in)
        "INCH, MILLIMETRE, 25.4", // inch
        "POUND_FORCE_FOOT, NEWTON_METRE, 1.355818", // pound-force foot
        "HORSEPOWER, KILOWATT, 0.7456999", // horsepower (550 ft lbf/s)
        "METRIC_HORSEPOWER, KILOWATT, 0.7354988", // horsepower (metric)
        "POUND, KILOGRAM, 0.4535924", // pound (avoirdupois)
        "FAHRENHEIT_RISE, KELVIN, 0.5555556" // degree Fahrenheit, interval
    })
    void factorsAsPrinted(Unit from, Unit to, double printed) {
        assertEquals(printed, from.to(to, 1), 6e-7 * printed);
    }

    @ParameterizedTest
    @CsvSource({"32, 0", "212, 100", "-40, -40", "98.6, 37"})
    void theFahrenheitScale(double fahrenheit, double celsius) {
        assertEquals(celsius, Unit.DEGREE_FAHRENHEIT.to(Unit.DEGREE_CELSIUS, fahrenheit), 1e-9);
        assertEquals(fahrenheit, Unit.DEGREE_CELSIUS.to(Unit.DEGREE_FAHRENHEIT, celsius), 1e-9);
    }

    @RepeatedTest(20)
    void thereAndBackIsTheSame(RepetitionInfo seed) {
        Random random = new Random(seed.getCurrentRepetition());
        Unit from = Unit.values()[random.nextInt(Unit.values().length)];
        double value = random.nextGaussian() * 1000;
        for (Unit to : Unit.of(from.quantity())) {
            assertEquals(value, to.to(from, from.to(to, value)), 1e-9 * Math.max(1, Math.abs(value)), from + " " + to);
        }
    }

    @Test
    void aUnitAsTypedIsReadByWhatWasAsked() {
        assertEquals(3.792, Unit.convert(55, "psi", "bar").orElseThrow(), 0.001);
        assertEquals(3.792, Unit.convert(55, "PSI", "bar").orElseThrow(), 0.001);
        assertEquals(20, Unit.convert(36, "°F", "K").orElseThrow(), 1e-9, "a rise, not a temperature");
        assertEquals(2.2222, Unit.convert(36, "°F", "°C").orElseThrow(), 1e-4);
        assertEquals(12000, Unit.convert(12, "kOhm", "Ω").orElseThrow(), 1e-9);
        assertEquals(7, Unit.convert(7, "1/min", "1/min").orElseThrow());
        assertEquals(5e6, Unit.convert(5, "MΩ", "Ω").orElseThrow(), 1e-3);
        assertEquals(5e-3, Unit.convert(5, "mohm", "Ω").orElseThrow(), 1e-9);
        assertTrue(Unit.convert(5, "MOHM", "Ω").isEmpty(), "a thousandth or a million?");
        assertTrue(Unit.convert(1, "gal", "L").isEmpty(), "which gallon?");
        assertTrue(Unit.convert(1, "psi", "mm").isEmpty());
        assertFalse(Unit.convert(1, "mV", "V").isEmpty());
        assertThrows(IllegalArgumentException.class, () -> Unit.PSI.to(Unit.LITRE, 1));
    }
}

package sternwright.app.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.Currency;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import sternwright.job.RuleOf;
import sternwright.measure.Money;
import sternwright.measure.unit.Unit;
import sternwright.measure.unit.YardUnits;
import sternwright.service.ReadingAsked;

class FiguresTest {
    private final Figures uk = Figures.of(Locale.UK);
    private final Figures us = Figures.of(Locale.US);
    private final Figures germany = Figures.of(Locale.GERMANY);

    @Test
    void datesInTheFormatOfTheRegionInEnglishWords() {
        LocalDate day = LocalDate.of(2026, 10, 5);
        same("5 October 2026", uk.date(day));
        same("October 5, 2026", us.date(day));
        same("5 October 2026", germany.date(day));
        same("5 to 16 October 2026", uk.dates(day, day.plusDays(11)));
        same("28 October to 4 November 2026", uk.dates(LocalDate.of(2026, 10, 28), LocalDate.of(2026, 11, 4)));
        same("28 October 2026 to 4 January 2027", uk.dates(LocalDate.of(2026, 10, 28), LocalDate.of(2027, 1, 4)));
        same("ashore Nov 2026 (2), 5 Oct 2026", uk.dated("ashore 2026-11 (2), 2026-10-05"));
        same("winter 2026/27, 2026-13, 2026-11-99", uk.dated("winter 2026/27, 2026-13, 2026-11-99"));
        same(
                "parts 1234-05, K-2030-06, card-tern-2026-10-05",
                uk.dated("parts 1234-05, K-2030-06, card-tern-2026-10-05"));
        same("October 5, 2026 to October 16, 2026", us.dates(day, day.plusDays(11)));
        same("5 October 2026", uk.dates(day, day));
    }

    @Test
    void moneyKeepsItsOwnDecimals() {
        same("€2,795.07", uk.money(Money.of(2795.07, Currency.getInstance("EUR"))));
        same("2.795,07 €", germany.money(Money.of(2795.07, Currency.getInstance("EUR"))));
        same("$1,200.00", us.money(Money.of(1200, Currency.getInstance("USD"))));
        same("JP¥31,000", uk.money(Money.of(31000, Currency.getInstance("JPY"))));
    }

    @Test
    void numbersWithUnits() {
        same("4.5 L", uk.quantity(4.5, "L"));
        same("4,5 L", germany.quantity(4.5, "L"));
        same("1 piece", uk.quantity(1, "pcs"));
        same("2 pieces", uk.quantity(2, "pcs"));
        same("4.3 weeks", uk.quantity(4.345, "week"));
        same("7.1 L", uk.supply(7.084, "L"));
        same("0.127 L", uk.supply(0.1269, "L"));
        same("1 lift", uk.quantity(1, "lift"));
        same("−25 °C", uk.quantity(-25, "°C"));
        same("0.125 mm", uk.quantity(0.1249999, "mm"));
    }

    @Test
    void timeAsPeopleSayIt() {
        same("45 min", uk.time(45));
        same("1 h", uk.time(60));
        same("1 h 8 min", uk.time(67.5));
        same("15 h 5 min", uk.time(905));
        same("0 min", uk.time(0));
    }

    @Test
    void limits() {
        same("at least 50 %", limit(50.0, null, "%"));
        same("at most −25 °C", limit(null, -25.0, "°C"));
        same("none", limit(null, 0.0, "pcs"));
        same("20 to 25 bar", limit(20.0, 25.0, "bar"));
        same("yes", limit(1.0, null, "1"));
        same("note it", limit(null, null, "L"));
    }

    @Test
    void theSheetOfTheRegion() {
        assertEquals("letter", us.sheet());
        assertEquals("A4", germany.sheet());
        assertEquals("en-GB", Figures.of(Locale.ROOT).language());
    }

    private String limit(@Nullable Double low, @Nullable Double high, String unit) {
        return uk.limit(new ReadingAsked("x", "x", unit, low, high, RuleOf.PRACTICE));
    }

    private static void same(String expected, String actual) {
        assertEquals(expected, actual.replace('\u00a0', ' '));
    }

    @Test
    void figuresInTheUnitsOfTheYard() {
        Figures us = Figures.of(Locale.US)
                .in(new YardUnits(
                        Unit.DEGREE_FAHRENHEIT,
                        Unit.US_GALLON,
                        Unit.PSI,
                        Unit.THOU,
                        Unit.POUND_FORCE_FOOT,
                        Unit.HORSEPOWER));
        assertEquals("1.4\u00a0US gal", us.supply(5.2, "L"));
        assertEquals("0.238\u00a0US gal", us.supply(0.9, "L"));
        assertEquals("55\u00a0psi", us.quantity(3.7921, "bar"));
        assertEquals("3.937\u00a0thou", us.quantity(0.1, "mm"));
        assertEquals("\u221212.64\u00a0°F", us.quantity(-24.8, "°C"));
        assertEquals("36\u00a0°F", us.quantity(20, "K"), "a rise of temperature");
        assertEquals("50\u00a0mL", us.quantity(50, "mL"));
        assertEquals("5\u00a0pieces", us.quantity(5, "pcs"));
        assertEquals("psi", us.unit("bar"));
        same("29.01 psi, should be 36.26 to 43.51 psi.", us.judged("2 bar, should be 2.5 to 3 bar.", "bar"));
        same("3 1/min is within at most 5 1/min.", us.judged("3 1/min is within at most 5 1/min.", "1/min"));
    }
}

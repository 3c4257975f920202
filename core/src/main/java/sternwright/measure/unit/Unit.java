package sternwright.measure.unit;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;

/**
 * A unit of the workshop. Its value in the unit kept inside is {@code (value − zero) · factor}. Factors: NIST SP 811 (2008),
 * appendix B.8; the Fahrenheit scale appendix B.9, the horsepower of 550 ft lbf/s. Gallons and horsepower come in two kinds,
 * so neither "gal" nor "PS" is taken for one of them unasked.
 */
public enum Unit {
    /** Degree Celsius; kept inside for temperatures. */
    DEGREE_CELSIUS("°C", Quantity.TEMPERATURE, 1, 0, "c", "degc", "deg c"),
    /** Degree Fahrenheit, exact. */
    DEGREE_FAHRENHEIT("°F", Quantity.TEMPERATURE, 1 / 1.8, 32, "f", "degf", "deg f"),
    /** Kelvin; kept inside for differences of temperature. */
    KELVIN("K", Quantity.TEMPERATURE_RISE, 1, 0, "°C", "c", "degc"),
    /** A difference of one degree Fahrenheit, exact. */
    FAHRENHEIT_RISE("°F", Quantity.TEMPERATURE_RISE, 1 / 1.8, 0, "f", "degf"),
    /** Litre; kept inside for volumes. */
    LITRE("L", Quantity.VOLUME, 1, 0, "litre", "litres", "liter", "liters"),
    /** Millilitre. */
    MILLILITRE("mL", Quantity.VOLUME, 0.001, 0),
    /** Gallon of the United States, 231 cubic inches, exact. */
    US_GALLON("US gal", Quantity.VOLUME, 3.785411784, 0, "usgal", "gal us"),
    /** Imperial gallon, exact. */
    UK_GALLON("UK gal", Quantity.VOLUME, 4.54609, 0, "ukgal", "imp gal", "gal uk"),
    /** Bar; kept inside for pressures. */
    BAR("bar", Quantity.PRESSURE, 1, 0),
    /** Kilopascal. */
    KILOPASCAL("kPa", Quantity.PRESSURE, 0.01, 0),
    /** Megapascal. */
    MEGAPASCAL("MPa", Quantity.PRESSURE, 10, 0),
    /** Pound-force per square inch: 4.4482216152605 N on 645.16 mm². */
    PSI("psi", Quantity.PRESSURE, 4.4482216152605 / 645.16 * 10, 0, "lbf/in2", "lbf/in²"),
    /** Millimetre; kept inside for clearances and travel. */
    MILLIMETRE("mm", Quantity.LENGTH, 1, 0),
    /** Thousandth of an inch, exact. */
    THOU("thou", Quantity.LENGTH, 0.0254, 0, "mil"),
    /** Inch, exact. */
    INCH("in", Quantity.LENGTH, 25.4, 0, "inch", "\""),
    /** Newton metre; kept inside for torque. */
    NEWTON_METRE("N m", Quantity.TORQUE, 1, 0, "nm", "n·m"),
    /** Pound-force foot: 4.4482216152605 N at 0.3048 m. */
    POUND_FORCE_FOOT("lbf ft", Quantity.TORQUE, 4.4482216152605 * 0.3048, 0, "lbfft", "ft lbf", "lb ft"),
    /** Kilowatt; kept inside for power. */
    KILOWATT("kW", Quantity.POWER, 1, 0),
    /** Horsepower of 550 foot pound-force a second. */
    HORSEPOWER("hp", Quantity.POWER, 550 * 4.4482216152605 * 0.3048 / 1000, 0, "bhp"),
    /** Metric horsepower: 75 kilogram-force metres a second, exact. */
    METRIC_HORSEPOWER("metric hp", Quantity.POWER, 0.73549875, 0),
    /** Kilogram; kept inside for mass. */
    KILOGRAM("kg", Quantity.MASS, 1, 0),
    /** Gram. */
    GRAM("g", Quantity.MASS, 0.001, 0),
    /** Pound, exact. */
    POUND("lb", Quantity.MASS, 0.45359237, 0, "lbs"),
    /** Volt; kept inside for voltage. */
    VOLT("V", Quantity.VOLTAGE, 1, 0),
    /** Millivolt. */
    MILLIVOLT("mV", Quantity.VOLTAGE, 0.001, 0),
    /** Ohm; kept inside for resistance. */
    OHM("Ω", Quantity.RESISTANCE, 1, 0, "ohm", "ohms"),
    /** Milliohm. */
    MILLIOHM("mΩ", Quantity.RESISTANCE, 0.001, 0, "mohm"),
    /** Kiloohm. */
    KILOOHM("kΩ", Quantity.RESISTANCE, 1000, 0, "kohm"),
    /** Megaohm. */
    MEGAOHM("MΩ", Quantity.RESISTANCE, 1e6, 0, "Mohm");

    private final String symbol;
    private final Quantity quantity;
    private final double factor;
    private final double zero;
    private final List<String> alsoWritten;

    Unit(String symbol, Quantity quantity, double factor, double zero, String... alsoWritten) {
        this.symbol = symbol;
        this.quantity = quantity;
        this.factor = factor;
        this.zero = zero;
        this.alsoWritten = List.of(alsoWritten);
    }

    /**
     * As written behind a figure.
     *
     * @return such as {@code psi}
     */
    public String symbol() {
        return symbol;
    }

    /**
     * What it measures.
     *
     * @return the quantity
     */
    public Quantity quantity() {
        return quantity;
    }

    /**
     * Units of a quantity.
     *
     * @param quantity what is measured
     * @return its units, the one kept inside first
     */
    public static List<Unit> of(Quantity quantity) {
        return Arrays.stream(values()).filter(u -> u.quantity == quantity).toList();
    }

    /**
     * The unit of a symbol that programmes use for what they ask.
     *
     * @param symbol the symbol, letter by letter
     * @return the unit, empty if it is none that can be converted
     */
    public static Optional<Unit> bySymbol(String symbol) {
        return Arrays.stream(values()).filter(u -> u.symbol.equals(symbol)).findFirst();
    }

    /**
     * A unit as people type it, for a quantity that is known. Upper case does no harm unless it makes another unit of it:
     * mΩ is not MΩ.
     *
     * @param written such as {@code PSI} or {@code deg F}
     * @param quantity what is measured
     * @return the unit, empty if none of this quantity is so written
     */
    public static Optional<Unit> written(String written, Quantity quantity) {
        String plain = written.strip();
        List<Unit> units = of(quantity);
        List<Unit> exact =
                units.stream().filter(u -> u.isWritten(plain::equals)).toList();
        List<Unit> near = exact.isEmpty()
                ? units.stream()
                        .filter(u -> u.isWritten(plain::equalsIgnoreCase))
                        .toList()
                : exact;
        return near.size() == 1 ? Optional.of(near.get(0)) : Optional.empty();
    }

    private boolean isWritten(Predicate<String> same) {
        return same.test(symbol) || alsoWritten.stream().anyMatch(same);
    }

    /**
     * The same quantity in another unit.
     *
     * @param value a figure in this unit
     * @param other a unit of the same quantity
     * @return the figure in the other unit
     * @throws IllegalArgumentException if the two do not measure the same
     */
    public double to(Unit other, double value) {
        if (other.quantity != quantity) {
            throw new IllegalArgumentException(symbol + " and " + other.symbol + " do not measure the same");
        }
        return this == other ? value : (value - zero) * factor / other.factor + other.zero;
    }

    /**
     * A figure in a unit as typed, brought to the unit that was asked.
     *
     * @param value the figure
     * @param written its unit as typed
     * @param asked symbol of the unit that was asked
     * @return the figure in the unit asked; empty if the two units do not measure the same or one is not known
     */
    public static OptionalDouble convert(double value, String written, String asked) {
        if (written.equals(asked)) {
            return OptionalDouble.of(value);
        }
        return bySymbol(asked)
                .flatMap(to -> written(written, to.quantity).map(from -> from.to(to, value)))
                .map(OptionalDouble::of)
                .orElseGet(OptionalDouble::empty);
    }
}

package sternwright.measure.unit;

import java.util.List;
import java.util.Optional;

/**
 * The units a yard works in. They change what is shown and what is meant by a figure typed without a unit; what is kept and
 * computed with stays as it is.
 *
 * @param temperature °C or °F; differences of temperature follow it
 * @param volume litre or one of the gallons
 * @param pressure bar, kPa or psi
 * @param length of clearances and travel: mm, thou or inch
 * @param torque N m or lbf ft
 * @param power kW, hp or metric hp
 */
public record YardUnits(Unit temperature, Unit volume, Unit pressure, Unit length, Unit torque, Unit power) {
    /** The units kept inside. */
    public static final YardUnits METRIC =
            new YardUnits(Unit.DEGREE_CELSIUS, Unit.LITRE, Unit.BAR, Unit.MILLIMETRE, Unit.NEWTON_METRE, Unit.KILOWATT);

    /** Refuses a unit that measures something else. */
    public YardUnits {
        require(temperature, Quantity.TEMPERATURE);
        require(volume, Quantity.VOLUME);
        require(pressure, Quantity.PRESSURE);
        require(length, Quantity.LENGTH);
        require(torque, Quantity.TORQUE);
        require(power, Quantity.POWER);
    }

    private static void require(Unit unit, Quantity quantity) {
        if (unit.quantity() != quantity) {
            throw new IllegalArgumentException(
                    unit.symbol() + " is no unit of " + quantity.name().toLowerCase(java.util.Locale.ROOT));
        }
    }

    /**
     * A figure as it is shown.
     *
     * @param value the figure
     * @param unit symbol of its unit
     */
    public record Shown(double value, String unit) {}

    /**
     * A figure in the yard's unit.
     *
     * @param value the figure as kept
     * @param symbol its unit as kept
     * @return the figure in the unit preferred; the same where nothing else is preferred
     */
    public Shown shown(double value, String symbol) {
        Optional<Unit> kept = Unit.bySymbol(symbol);
        Optional<Unit> preferred = kept.flatMap(this::preferred);
        return preferred.isEmpty() || preferred.get() == kept.get()
                ? new Shown(value, symbol)
                : new Shown(
                        kept.get().to(preferred.get(), value), preferred.get().symbol());
    }

    private Optional<Unit> preferred(Unit kept) {
        if (kept.quantity() == Quantity.TEMPERATURE_RISE) {
            return Optional.of(temperature == Unit.DEGREE_FAHRENHEIT ? Unit.FAHRENHEIT_RISE : Unit.KELVIN);
        }
        // Only what is kept in the usual unit of the workshop: a millilitre of water in a trap stays one.
        return Unit.of(kept.quantity()).get(0) == kept
                ? List.of(temperature, volume, pressure, length, torque, power).stream()
                        .filter(u -> u.quantity() == kept.quantity())
                        .findFirst()
                : Optional.empty();
    }
}

package sternwright.app.files.kind;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;
import sternwright.app.files.shape.Block;
import sternwright.app.files.shape.Field;
import sternwright.app.files.shape.Shapes;
import sternwright.measure.unit.Quantity;
import sternwright.measure.unit.Unit;
import sternwright.measure.unit.YardUnits;

/** The units a yard works in, as its file says them. */
final class UnitsShape {
    private static final Field<YardUnits, Unit> TEMPERATURE =
            of("temperature", Quantity.TEMPERATURE, YardUnits::temperature, "temperatures; differences follow");
    private static final Field<YardUnits, Unit> VOLUME =
            of("volume", Quantity.VOLUME, YardUnits::volume, "oils, coolant, fuel");
    private static final Field<YardUnits, Unit> PRESSURE =
            of("pressure", Quantity.PRESSURE, YardUnits::pressure, "pressures");
    private static final Field<YardUnits, Unit> LENGTH =
            of("clearance", Quantity.LENGTH, YardUnits::length, "clearances, play, travel");
    private static final Field<YardUnits, Unit> TORQUE =
            of("torque", Quantity.TORQUE, YardUnits::torque, "tightening torques");
    private static final Field<YardUnits, Unit> POWER = of("power", Quantity.POWER, YardUnits::power, "rated power");

    static final Block<YardUnits> UNITS = Block.of(
            "units",
            "the units in which figures are shown, and meant where none is typed; files keep theirs",
            v -> new YardUnits(
                    v.get(TEMPERATURE), v.get(VOLUME), v.get(PRESSURE), v.get(LENGTH), v.get(TORQUE), v.get(POWER)),
            TEMPERATURE,
            VOLUME,
            PRESSURE,
            LENGTH,
            TORQUE,
            POWER);

    private UnitsShape() {}

    private static Field<YardUnits, Unit> of(
            String name, Quantity quantity, Function<YardUnits, Unit> getter, String meaning) {
        Map<String, Unit> bySymbol = new LinkedHashMap<>();
        Unit.of(quantity).forEach(u -> bySymbol.put(u.symbol(), u));
        return Field.or(
                name, Shapes.oneOf(bySymbol, Unit::symbol), Unit.of(quantity).get(0), getter::apply, meaning);
    }
}

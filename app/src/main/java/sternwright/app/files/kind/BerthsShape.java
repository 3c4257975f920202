package sternwright.app.files.kind;

import java.time.MonthDay;
import java.util.List;
import java.util.stream.Stream;
import sternwright.app.files.shape.Block;
import sternwright.app.files.shape.Field;
import sternwright.app.files.shape.Many;
import sternwright.app.files.shape.Numbers;
import sternwright.app.files.shape.Shape;
import sternwright.app.files.shape.Shapes;
import sternwright.app.files.shape.Values;
import sternwright.boat.Berth;
import sternwright.boat.ShorePower;
import sternwright.boat.Water;

/** The berths: {@code berths.yaml}. */
public final class BerthsShape {
    private static final Field<Water, Double> SALINITY = Field.optional(
            "salinity-psu", Numbers.notNegative().atMost(42), Water::salinityPsu, "practical salinity, 0 to 42");
    private static final Field<Water, Double> RESISTIVITY = Field.optional(
            "resistivity-ohm-m",
            Numbers.positive().atMost(100_000),
            Water::resistivityOhmM,
            "measured resistivity at 25 °C, ohm metre; leads over salinity");
    private static final Field<Water, List<Double>> TEMPERATURE = Field.or(
            "temperature-c",
            Many.list((Shape<Double>) Numbers.any().atLeast(-3).atMost(40)).between(12, 12),
            List.of(),
            Water::temperatureC,
            "water temperature of January to December, °C");

    private static final Block<Water> WATER = Block.of(
            "the water",
            "the water of the berth",
            v -> new Water(v.orNull(SALINITY), v.orNull(RESISTIVITY), v.get(TEMPERATURE)),
            SALINITY,
            RESISTIVITY,
            TEMPERATURE);
    private static final Water UNKNOWN = new Water(null, null, List.of());

    private static final Field<Berth, String> ID =
            Field.required("id", Shapes.id(), Berth::id, "short name by which boats refer to it");
    private static final Field<Berth, String> NAME =
            Field.required("name", Shapes.text(), Berth::name, "as people say it");
    private static final Field<Berth, Double> LATITUDE = Field.required(
            "latitude-deg",
            Numbers.any().atLeast(-90).atMost(90),
            Berth::latitudeDeg,
            "latitude, north positive; its sign tells the hemisphere");
    private static final Field<Berth, Water> WATER_FIELD = Field.or("water", WATER, UNKNOWN, Berth::water, "the water");
    private static final Field<Berth, MonthDay> FIRST_FROST = Field.optional(
            "first-frost", Shapes.monthDay(), Berth::firstFrost, "first night of frost to be ready for; empty: never");
    private static final Field<Berth, MonthDay> LAST_FROST = Field.optional(
            "last-frost", Shapes.monthDay(), Berth::lastFrost, "last night of frost in spring; empty: never");
    private static final Field<Berth, Boolean> HOT =
            Field.or("hot-marina", Shapes.yesNo(), false, Berth::hotMarina, "anodes go unusually fast here");
    private static final Field<Berth, ShorePower> SHORE_POWER = Field.or(
            "shore-power",
            Shapes.oneOf(ShorePower.class),
            ShorePower.NONE,
            Berth::shorePower,
            "what boats here are plugged into");

    private static final Block<Berth> BERTH = Block.of(
            "a berth",
            "where boats lie",
            BerthsShape::berth,
            ID,
            NAME,
            LATITUDE,
            WATER_FIELD,
            FIRST_FROST,
            LAST_FROST,
            HOT,
            SHORE_POWER);

    private static final Field<List<Berth>, List<Berth>> LIST = Field.required(
            "berths", Many.list(BERTH).uniqueBy(Berth::id), berths -> berths, "where the yard's boats lie");

    /** The whole file. */
    public static final Block<List<Berth>> BERTHS =
            Block.of("the berths", "where the yard's boats lie", v -> v.get(LIST), LIST);

    private BerthsShape() {}

    /**
     * What a field of the file means.
     *
     * @param field its name
     * @return the meaning; empty if it needs no saying
     */
    public static String meaning(String field) {
        return Stream.of(BERTHS, BERTH, WATER)
                .flatMap(b -> b.fields().stream())
                .filter(f -> f.name().equals(field))
                .map(Field::meaning)
                .findFirst()
                .orElse("");
    }

    private static Berth berth(Values<Berth> v) {
        if ((v.orNull(FIRST_FROST) == null) != (v.orNull(LAST_FROST) == null)) {
            throw new IllegalArgumentException(
                    "give both first-frost and last-frost, or neither where it never freezes");
        }
        return new Berth(
                v.get(ID),
                v.get(NAME),
                v.get(LATITUDE),
                v.get(WATER_FIELD),
                v.orNull(FIRST_FROST),
                v.orNull(LAST_FROST),
                v.get(HOT),
                v.get(SHORE_POWER));
    }
}

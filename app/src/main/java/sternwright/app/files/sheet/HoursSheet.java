package sternwright.app.files.sheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import sternwright.app.files.shape.Block;
import sternwright.app.files.shape.Field;
import sternwright.app.files.shape.Numbers;
import sternwright.app.files.shape.Shapes;
import sternwright.app.files.shape.Values;
import sternwright.history.MeterReading;

/** What the hour meters of one boat said: {@code hours/ID.csv}; with a column for the boat in front, of many. */
public final class HoursSheet {
    /**
     * A reading with the boat it is of.
     *
     * @param boatId the boat
     * @param reading the reading
     */
    public record OfBoat(String boatId, MeterReading reading) {}

    /** Rows of one boat. */
    public static final Sheet<MeterReading> ONE_BOAT = oneBoat();

    /** Rows of many boats, for import and export. */
    public static final Sheet<OfBoat> MANY_BOATS = manyBoats();

    private HoursSheet() {}

    private static Sheet<MeterReading> oneBoat() {
        Columns<MeterReading> columns = new Columns<>(r -> r);
        return new Sheet<>(Block.of("a meter reading", "what hour meters said", columns::reading, columns.all()));
    }

    private static Sheet<OfBoat> manyBoats() {
        Field<OfBoat, String> boat = Field.required("boat", Shapes.id(), OfBoat::boatId, "id of the boat");
        Columns<OfBoat> columns = new Columns<>(OfBoat::reading);
        List<Field<OfBoat, ?>> all = new ArrayList<>(List.of(boat));
        all.addAll(columns.all());
        return new Sheet<>(Block.of(
                "a meter reading", "what hour meters said", v -> new OfBoat(v.get(boat), columns.reading(v)), all));
    }

    private static final class Columns<R> {
        private final Field<R, LocalDate> date;
        private final Field<R, String> installation;
        private final Field<R, Double> hours;
        private final Field<R, Double> newMeterHours;
        private final Field<R, String> who;

        Columns(Function<R, MeterReading> of) {
            date = Field.required("date", Shapes.pastDate(), r -> of.apply(r).date(), "the day");
            installation = Field.required(
                    "installation", Shapes.id(), r -> of.apply(r).installationId(), "id of the installation");
            hours = Field.required(
                    "hours",
                    Numbers.notNegative(),
                    r -> of.apply(r).hours(),
                    "what the meter showed; for a replacement the last figure of the old meter");
            newMeterHours = Field.optional(
                    "new-meter-hours",
                    Numbers.notNegative(),
                    r -> of.apply(r).newMeterHours(),
                    "for a replacement the first figure of the new meter; empty for a plain reading");
            who = Field.or("who", Shapes.anyText(), "", r -> of.apply(r).who(), "who read it");
        }

        List<Field<R, ?>> all() {
            return List.of(date, installation, hours, newMeterHours, who);
        }

        MeterReading reading(Values<R> v) {
            return new MeterReading(
                    v.get(date), v.get(installation), v.get(hours), v.orNull(newMeterHours), v.get(who));
        }
    }
}

package sternwright.app.files.sheet;

import java.util.ArrayList;
import java.util.List;
import sternwright.app.files.shape.Block;
import sternwright.app.files.shape.Field;
import sternwright.app.files.shape.Shapes;
import sternwright.history.HistoryLine;

/** What was done on one boat: {@code history/ID.csv}; with a column for the boat in front, what was done on many. */
public final class HistorySheet {
    /**
     * A line with the boat it is of.
     *
     * @param boatId the boat
     * @param line the line
     */
    public record OfBoat(String boatId, HistoryLine line) {}

    /** Rows of one boat. */
    public static final Sheet<HistoryLine> ONE_BOAT = oneBoat();

    /** Rows of many boats, for import and export. */
    public static final Sheet<OfBoat> MANY_BOATS = manyBoats();

    private HistorySheet() {}

    private static Sheet<HistoryLine> oneBoat() {
        EntryColumns<HistoryLine> columns = new EntryColumns<>(l -> l);
        return new Sheet<>(
                Block.of("a line of history", "what was done on a boat", columns::line, columns.all()),
                StrikeColumns.NAMES);
    }

    private static Sheet<OfBoat> manyBoats() {
        Field<OfBoat, String> boat = Field.required("boat", Shapes.id(), OfBoat::boatId, "id of the boat");
        EntryColumns<OfBoat> columns = new EntryColumns<>(OfBoat::line);
        List<Field<OfBoat, ?>> all = new ArrayList<>(List.of(boat));
        all.addAll(columns.all());
        return new Sheet<>(
                Block.of(
                        "a line of history",
                        "what was done on boats",
                        v -> new OfBoat(v.get(boat), columns.line(v)),
                        all),
                StrikeColumns.NAMES);
    }
}

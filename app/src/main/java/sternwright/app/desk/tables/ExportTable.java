package sternwright.app.desk.tables;

import java.io.IOException;
import java.io.Writer;
import java.util.List;
import sternwright.app.files.YardFiles;
import sternwright.app.files.sheet.BoatsSheet;
import sternwright.app.files.sheet.HistorySheet;
import sternwright.app.files.sheet.HoursSheet;

/** Gives the register, the history or the hours of a yard as one table. */
public final class ExportTable {
    private ExportTable() {}

    /**
     * The register, a row for each installation.
     *
     * @param files what the yard's folder says
     * @return CSV
     */
    public static String boats(YardFiles files) {
        return BoatsSheet.SHEET.write(files.boats().values().stream()
                .flatMap(b -> BoatsSheet.rows(b).stream())
                .toList());
    }

    /**
     * The history of all boats, struck lines with their strikes, boat by boat: it is the longest table by far.
     *
     * @param files what the yard's folder says
     * @param to takes CSV
     * @throws IOException if it cannot be written
     */
    public static void history(YardFiles files, Writer to) throws IOException {
        HistorySheet.MANY_BOATS.write(
                () -> files.histories().values().stream()
                        .flatMap(h -> h.lines().stream().map(l -> new HistorySheet.OfBoat(h.boatId(), l))),
                to);
    }

    /**
     * The meter readings of all boats.
     *
     * @param files what the yard's folder says
     * @return CSV
     */
    public static String hours(YardFiles files) {
        List<HoursSheet.OfBoat> rows = files.histories().values().stream()
                .flatMap(h -> h.meter().stream().map(r -> new HoursSheet.OfBoat(h.boatId(), r)))
                .toList();
        return HoursSheet.MANY_BOATS.write(rows);
    }
}

package sternwright.app.desk.tables;

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
     * The history of all boats, struck lines with their strikes.
     *
     * @param files what the yard's folder says
     * @return CSV
     */
    public static String history(YardFiles files) {
        List<HistorySheet.OfBoat> rows = files.histories().values().stream()
                .flatMap(h -> h.lines().stream().map(l -> new HistorySheet.OfBoat(h.boatId(), l)))
                .toList();
        return HistorySheet.MANY_BOATS.write(rows);
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

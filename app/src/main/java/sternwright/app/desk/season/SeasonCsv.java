package sternwright.app.desk.season;

import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.stream.Stream;
import sternwright.app.desk.tables.SheetCell;

/** The operations of a season as a sheet, with the columns the command line prints. */
public final class SeasonCsv {
    private static final String[] HEAD = {
        "boat-id",
        "boat",
        "visit",
        "operation",
        "step",
        "from",
        "until",
        "people",
        "hoist",
        "place",
        "state",
        "days-late",
        "reason",
        "works"
    };

    private SeasonCsv() {}

    /**
     * Writes the sheet.
     *
     * @param lines operations in the order they shall stand
     * @return comma separated values (RFC 4180) with one header line
     */
    public static String of(List<SeasonLine> lines) {
        StringWriter text = new StringWriter();
        CsvWriter csv = CsvWriter.builder().build(text);
        csv.writeRecord(HEAD);
        for (SeasonLine l : lines) {
            csv.writeRecord(Stream.of(
                            l.boatId(),
                            l.boat(),
                            l.visit(),
                            l.operation(),
                            l.step(),
                            l.from().toString(),
                            l.until().toString(),
                            l.people(),
                            l.hoist(),
                            l.place(),
                            l.state(),
                            Integer.toString(l.daysLate()),
                            l.reason(),
                            l.works())
                    .map(SheetCell::plain)
                    .toList());
        }
        return text.toString();
    }
}

package sternwright.app.desk.campaign;

import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Stream;
import sternwright.app.desk.tables.SheetCell;
import sternwright.due.Due;

/** A campaign as a sheet. */
final class CampaignCsv {
    private static final String[] HEAD = {
        "boat",
        "name",
        "owner",
        "contact",
        "berth",
        "installation",
        "side",
        "part",
        "kind",
        "rule",
        "work",
        "state",
        "due-on",
        "since",
        "months",
        "hours",
        "safety",
        "place",
        "half",
        "source"
    };

    private CampaignCsv() {}

    static String of(CampaignList list) {
        StringWriter text = new StringWriter();
        CsvWriter csv = CsvWriter.builder().build(text);
        csv.writeRecord(HEAD);
        list.lines().forEach(l -> csv.writeRecord(cells(l)));
        return text.toString();
    }

    private static List<String> cells(CampaignLine line) {
        DueRow row = line.row();
        Due due = row.due();
        Double hours = line.hours();
        return Stream.of(
                        row.boat().id(),
                        row.boat().name(),
                        row.boat().owner().name(),
                        Objects.requireNonNullElse(row.boat().owner().contact(), ""),
                        row.berthName(),
                        row.installation().id(),
                        row.installation().side().name().toLowerCase(Locale.ROOT),
                        row.part().id(),
                        row.kindName(),
                        due.rule().id(),
                        due.rule().work(),
                        due.state().words(),
                        due.dueOn().toString(),
                        Objects.toString(line.since(), ""),
                        Objects.toString(line.months(), ""),
                        hours == null ? "" : String.format(Locale.ROOT, "%.0f", hours),
                        due.rule().safety() ? "yes" : "no",
                        due.rule().place().words(),
                        due.rule().half().words(),
                        due.inForce().sources())
                .map(SheetCell::plain)
                .toList();
    }
}

package sternwright.app.command.text;

import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import tools.jackson.databind.JsonNode;

/** Answers as a sheet: one header line with the names of JSON, one line for each record. */
public final class Csv {
    private Csv() {}

    public static void print(List<?> rows, PrintWriter out) {
        StringWriter text = new StringWriter();
        CsvWriter csv = CsvWriter.builder().build(text);
        boolean header = true;
        for (Object row : rows) {
            JsonNode node = Json.tree(row);
            if (header) {
                csv.writeRecord(node.propertyNames());
                header = false;
            }
            csv.writeRecord(
                    node.valueStream().map(v -> v.isNull() ? "" : v.asString()).toList());
        }
        out.print(text);
    }
}

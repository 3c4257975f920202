package sternwright.app.command.text;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;

/** Lines in columns, as wide as they must be. */
public final class TextTable {
    private final List<List<String>> rows = new ArrayList<>();

    public TextTable(String... header) {
        rows.add(List.of(header));
    }

    public void row(String... cells) {
        rows.add(List.of(cells));
    }

    /** The rows alone, without the header. */
    public void printRows(PrintWriter out) {
        List<String> header = rows.remove(0);
        if (!rows.isEmpty()) {
            print(out);
        }
        rows.add(0, header);
    }

    public void print(PrintWriter out) {
        int columns = rows.get(0).size();
        int[] widths = new int[columns];
        for (List<String> row : rows) {
            for (int i = 0; i < columns; i++) {
                widths[i] = Math.max(widths[i], row.get(i).length());
            }
        }
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder();
            for (int i = 0; i < columns; i++) {
                line.append(row.get(i)).append(" ".repeat(widths[i] - row.get(i).length() + 2));
            }
            out.println(line.toString().stripTrailing());
        }
    }
}

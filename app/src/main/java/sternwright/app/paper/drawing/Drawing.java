package sternwright.app.paper.drawing;

import java.util.List;

/**
 * A drawing with the figures behind it.
 *
 * @param key short name: {@code circuit}, {@code potentials}, {@code anode:port/leg-anode}
 * @param title as people say it
 * @param wide SVG for a sheet or a screen
 * @param narrow SVG for a phone; the same one where it fits both
 * @param columns heads of the table behind it, with their units
 * @param rows its rows
 */
public record Drawing(
        String key, String title, String wide, String narrow, List<String> columns, List<List<String>> rows) {
    /** Copies the lists. */
    public Drawing {
        columns = List.copyOf(columns);
        rows = rows.stream().map(List::copyOf).toList();
    }
}

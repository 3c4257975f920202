package sternwright.history;

import java.util.ArrayList;
import java.util.List;

/**
 * Lines of a history parted by whether they hold. A line with a strike strikes the last line above it that says the same and still
 * holds; so the same work written down twice by mistake loses one of the two, and work written down again after a strike holds.
 *
 * @param standing entries that hold, in the order of their lines
 * @param struck entries that do not, in the order of their strikes
 * @param stray lines with a strike above which no line says the same
 */
public record StruckLines(List<ServiceEntry> standing, List<StruckEntry> struck, List<HistoryLine> stray) {
    /** Copies the lists. */
    public StruckLines {
        standing = List.copyOf(standing);
        struck = List.copyOf(struck);
        stray = List.copyOf(stray);
    }

    /**
     * Parts lines.
     *
     * @param lines in the order in which they were written
     * @return what holds, what was struck, and strikes that strike nothing
     */
    public static StruckLines of(List<HistoryLine> lines) {
        List<ServiceEntry> standing = new ArrayList<>();
        List<StruckEntry> struck = new ArrayList<>();
        List<HistoryLine> stray = new ArrayList<>();
        for (HistoryLine line : lines) {
            Strike strike = line.strike();
            int at = strike == null ? -1 : standing.lastIndexOf(line.entry());
            if (strike == null) {
                standing.add(line.entry());
            } else if (at < 0) {
                stray.add(line);
            } else {
                struck.add(new StruckEntry(standing.remove(at), strike));
            }
        }
        return new StruckLines(standing, struck, stray);
    }
}

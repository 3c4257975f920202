package sternwright.app.desk.tables;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import sternwright.app.desk.due.DueWork;
import sternwright.app.desk.recording.EntrySense;
import sternwright.app.desk.recording.ReadingSense;
import sternwright.app.files.problem.Problem;
import sternwright.app.files.sheet.Sheet;
import sternwright.boat.Boat;
import sternwright.history.BoatHistory;
import sternwright.history.HistoryLine;
import sternwright.history.ServiceEntry;
import sternwright.history.StruckLines;

/**
 * Lines of a table that are not in a boat's history yet. A line that is there already, letter by letter, is passed over; one that
 * comes again after it was struck in the same table is not.
 */
final class FreshLines {
    private final Boat boat;
    private final DueWork work;
    private final ReadingSense sense;
    private final String source;
    private final LocalDate latest;
    private final List<Problem> problems;
    private final List<HistoryLine> all;
    private final Set<HistoryLine> known;
    private final List<Sheet.Row<HistoryLine>> fresh = new ArrayList<>();

    FreshLines(Boat boat, DueWork work, BoatHistory history, String source, LocalDate latest, List<Problem> problems) {
        this.boat = boat;
        this.work = work;
        this.sense = new ReadingSense(work, boat, history);
        this.source = source;
        this.latest = latest;
        this.problems = problems;
        this.all = new ArrayList<>(history.lines());
        this.known = new HashSet<>(all);
    }

    void take(Sheet.Row<HistoryLine> row) {
        EntrySense.Where where = new EntrySense.Where(source, row.line());
        ServiceEntry entry = sense.inUnitsAsked(row.value().entry(), where, problems);
        HistoryLine line = new HistoryLine(entry, row.value().strike());
        if (!known.add(line)) {
            return;
        }
        all.add(line);
        fresh.add(new Sheet.Row<>(row.line(), line));
        if (line.strike() != null) {
            known.remove(HistoryLine.of(entry));
            if (StruckLines.of(all).stray().contains(line)) {
                problems.add(where.problem(
                        "struck-on",
                        "no line above says the same, so nothing can be struck",
                        "a line that repeats an earlier one in all its columns",
                        ""));
            }
        }
    }

    List<HistoryLine> lines() {
        standing()
                .forEach(r -> problems.addAll(
                        EntrySense.check(boat, work, r.value(), new EntrySense.Where(source, r.line()), latest)));
        return fresh.stream().map(Sheet.Row::value).toList();
    }

    /** New entries that hold; those struck in the same table are kept as they are and asked nothing. */
    List<Sheet.Row<ServiceEntry>> standing() {
        List<ServiceEntry> left = new ArrayList<>(StruckLines.of(all).standing());
        List<Sheet.Row<ServiceEntry>> rows = new ArrayList<>();
        for (Sheet.Row<HistoryLine> row : fresh) {
            if (row.value().strike() == null && left.remove(row.value().entry())) {
                rows.add(new Sheet.Row<>(row.line(), row.value().entry()));
            }
        }
        return List.copyOf(rows);
    }
}

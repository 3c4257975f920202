package sternwright.app.command.recording;

import java.io.PrintWriter;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import sternwright.app.command.text.Json;
import sternwright.app.command.text.TextTable;
import sternwright.app.desk.recording.RecordWork;
import sternwright.due.Due;

/** Says what was written and how the due list moved. */
public final class RecordedText {
    private RecordedText() {}

    static void print(RecordWork.Recorded recorded, boolean json, PrintWriter out) {
        if (json) {
            Json.print(
                    Map.of("entries", recorded.entries(), "moved", moved(recorded), "remarks", recorded.remarks()),
                    out);
            return;
        }
        recorded.entries()
                .forEach(e -> out.println("Wrote " + e.date() + "  " + e.part() + "  " + e.ruleId() + "  "
                        + e.outcome().name().toLowerCase(java.util.Locale.ROOT)
                        + (e.hours() == null ? "" : "  at " + e.hours() + " h")));
        recorded.remarks().forEach(r -> out.println("Remark: " + r));
        List<Move> moved = moved(recorded);
        if (moved.isEmpty()) {
            out.println("The due list stays as it was.");
            return;
        }
        TextTable table = new TextTable("part", "work", "was", "is now");
        moved.forEach(m -> table.row(m.part(), m.work(), m.was(), m.isNow()));
        table.print(out);
    }

    /** A work whose date or state changed. */
    record Move(String part, String work, String was, String isNow) {}

    private static List<Move> moved(RecordWork.Recorded recorded) {
        Map<String, Due> before = new HashMap<>();
        recorded.before().forEach(d -> before.put(key(d), d));
        Map<String, Due> after = new HashMap<>();
        recorded.after().forEach(d -> after.put(key(d), d));
        List<Move> moves = new java.util.ArrayList<>();
        recorded.after().stream()
                .filter(d -> !said(d).equals(said(before.get(key(d)))))
                .forEach(d ->
                        moves.add(new Move(d.part().toString(), d.rule().work(), said(before.get(key(d))), said(d))));
        recorded.before().stream()
                .filter(d -> !after.containsKey(key(d)))
                .forEach(d -> moves.add(new Move(d.part().toString(), d.rule().work(), said(d), "not due")));
        return moves;
    }

    private static String key(Due due) {
        return due.part() + " " + due.rule().id();
    }

    private static String said(@org.jspecify.annotations.Nullable Due due) {
        return due == null ? "not due" : due.state().words() + " " + due.dueOn();
    }
}

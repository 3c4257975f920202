package sternwright.app.command.recording;

import java.io.PrintWriter;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import sternwright.app.command.text.Json;
import sternwright.app.command.text.PeopleDates;
import sternwright.app.command.text.TextTable;
import sternwright.app.desk.due.DueMove;
import sternwright.app.desk.recording.RecordWork;
import sternwright.app.desk.recording.StrikeEntry;
import sternwright.due.Due;
import sternwright.history.MeterReading;
import sternwright.history.Outcome;
import sternwright.history.ServiceEntry;

/** Says what was written and how the due list moved. */
public final class RecordedText {
    private final PrintWriter out;
    private final DateTimeFormatter dates;

    private RecordedText(PrintWriter out, Locale reader) {
        this.out = out;
        this.dates = PeopleDates.of(reader);
    }

    static void print(String boat, RecordWork.Recorded recorded, boolean json, Locale reader, PrintWriter out) {
        if (json) {
            Json.print(
                    Map.of(
                            "entries",
                            recorded.entries(),
                            "meter",
                            recorded.meter(),
                            "moved",
                            moved(recorded.before(), recorded.after()),
                            "remarks",
                            recorded.remarks()),
                    out);
            return;
        }
        RecordedText text = new RecordedText(out, reader);
        text.written(boat, recorded);
        recorded.remarks().forEach(r -> out.println("Remark: " + r));
        text.moves(moved(recorded.before(), recorded.after()));
    }

    static void print(String boat, StrikeEntry.Struck struck, boolean json, Locale reader, PrintWriter out) {
        List<Move> moved = moved(struck.before(), struck.after());
        if (json) {
            Json.print(Map.of("struck", struck.struck(), "moved", moved), out);
            return;
        }
        RecordedText text = new RecordedText(out, reader);
        out.println("Struck in history/" + boat + ".csv:");
        text.entry(struck.struck().entry());
        text.moves(moved);
    }

    private void written(String boat, RecordWork.Recorded recorded) {
        if (!recorded.entries().isEmpty()) {
            out.println("Wrote history/" + boat + ".csv:");
            recorded.entries().forEach(this::entry);
        }
        if (!recorded.meter().isEmpty()) {
            out.println("Wrote hours/" + boat + ".csv:");
            recorded.meter().forEach(this::reading);
        }
    }

    private void entry(ServiceEntry e) {
        out.println("  " + dates.format(e.date()) + "  " + e.part() + "  " + e.ruleId() + "  "
                + e.outcome().name().toLowerCase(Locale.ROOT)
                + (e.hours() == null ? "" : "  at " + plain(e.hours()) + " h")
                + (e.outcome() == Outcome.REFUSED && !e.who().isEmpty() ? ", signed by " + e.who() : ""));
        e.findings()
                .forEach(f -> out.println(
                        "    " + f.reading() + " is " + f.severity().name().toLowerCase(Locale.ROOT) + ": " + f.why()));
    }

    private void reading(MeterReading r) {
        out.println("  " + dates.format(r.date()) + "  " + r.installationId() + "  " + plain(r.hours()) + " h"
                + (r.newMeterHours() == null
                        ? ""
                        : " on the old meter; the new one begins at " + plain(r.newMeterHours()) + " h"));
    }

    private static String plain(double hours) {
        return BigDecimal.valueOf(hours).stripTrailingZeros().toPlainString();
    }

    private void moves(List<Move> moved) {
        if (moved.isEmpty()) {
            out.println("The due list stays as it was.");
            return;
        }
        out.println("The due list moves:");
        TextTable table = new TextTable("part", "work", "was", "is now");
        moved.forEach(m -> table.row(m.part(), m.work(), said(m.was(), m.wasDue()), said(m.isNow(), m.dueOn())));
        table.print(out);
    }

    private String said(String state, @Nullable LocalDate dueOn) {
        return dueOn == null ? state : state + " " + dates.format(dueOn);
    }

    /** A work whose date or state changed; no date where it is not due. */
    record Move(
            String part,
            String work,
            String was,
            @Nullable LocalDate wasDue,
            String isNow,
            @Nullable LocalDate dueOn) {
        static Move of(Due any, @Nullable Due before, @Nullable Due after) {
            return new Move(
                    any.part().toString(),
                    any.rule().work(),
                    state(before),
                    before == null ? null : before.dueOn(),
                    state(after),
                    after == null ? null : after.dueOn());
        }

        private static String state(@Nullable Due due) {
            return due == null ? "not due" : due.state().words();
        }
    }

    private static List<Move> moved(List<Due> before, List<Due> after) {
        return DueMove.between(before, after).stream()
                .map(m -> Move.of(m.due(), m.before(), m.after()))
                .toList();
    }
}

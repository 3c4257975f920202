package sternwright.app.command.season;

import java.io.PrintWriter;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import sternwright.app.command.text.TextTable;
import sternwright.app.desk.season.PlannedSeason;
import sternwright.season.dated.Published;
import sternwright.season.dated.answer.Binding;
import sternwright.season.dated.answer.CostSplit;
import sternwright.season.dated.answer.DatedOperation;
import sternwright.season.dated.answer.DatedOperation.State;
import sternwright.season.dated.answer.DatedSeason;
import sternwright.season.dated.answer.DatedVisit;
import sternwright.season.dated.answer.Load;
import sternwright.season.dated.answer.MovedDate;

/** A planned season as text. */
public final class SeasonText {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM yyyy", Locale.ENGLISH);
    private static final DateTimeFormatter HOUR = DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);

    private final PrintWriter out;
    private final PlannedSeason planned;
    private final DatedSeason season;
    private final String currency;

    SeasonText(PrintWriter out, PlannedSeason planned) {
        this.out = out;
        this.planned = planned;
        season = planned.dated();
        currency = planned.yard().yard().currency().getCurrencyCode();
    }

    void print(boolean everyOperation) {
        head();
        stands(State.UNSAFE, "Not safe against frost in time:");
        stands(State.LATE, "Late:");
        moved();
        binds();
        costs();
        out.println();
        if (everyOperation) {
            operations();
        } else {
            visits();
        }
        planned.remarks().forEach(r -> out.println("Mind: " + r));
    }

    private void head() {
        out.println(planned.yard().yard().name() + ": season " + DAY.format(season.from()) + " to "
                + DAY.format(season.to()) + ", "
                + season.visits().stream().map(DatedVisit::boatId).distinct().count() + " boats, "
                + season.visits().size() + " visits, " + season.operations().size()
                + " operations. Proved by both judges.");
    }

    private void stands(State state, String title) {
        List<DatedOperation> standing =
                season.operations().stream().filter(o -> o.state() == state).toList();
        if (standing.isEmpty()) {
            return;
        }
        out.println();
        out.println(title);
        TextTable table = new TextTable("boat", "operation", "date", "why");
        standing.forEach(
                o -> table.row(o.meaning().boatName(), o.meaning().operation(), DAY.format(o.from()), o.reason()));
        table.print(out);
    }

    private void moved() {
        if (season.moved().isEmpty()) {
            return;
        }
        out.println();
        out.println("Promised dates that move, " + season.moved().size() + " of "
                + planned.season().request().promises().size() + ":");
        TextTable table = new TextTable("boat", "operation", "was", "is", "why");
        for (MovedDate m : season.moved()) {
            table.row(m.boatName(), m.name().operation(), DAY.format(m.was()), day(m.is()), m.reason());
        }
        table.print(out);
    }

    private static String day(@org.jspecify.annotations.Nullable LocalDate day) {
        return day == null ? "gone" : DAY.format(day);
    }

    private void binds() {
        List<Binding> tight = season.binds().stream()
                .filter(b -> b.kind() != Load.Kind.PERSON)
                .toList();
        if (tight.isEmpty()) {
            return;
        }
        out.println();
        out.println("What binds (full, or nearly):");
        tight.forEach(b -> out.println("  " + b.name() + ", " + DAY.format(b.from()) + " to " + DAY.format(b.to())));
    }

    private void costs() {
        CostSplit c = season.cost();
        out.println();
        out.println(String.format(
                Locale.ROOT,
                "Cost %.0f %s: frost %.0f, promises %.0f, late %.0f, early %.0f, overtime %.0f, unevenness %.0f.",
                c.total(),
                currency,
                c.frost(),
                c.promises(),
                c.late(),
                c.early(),
                c.overtime(),
                c.uneven()));
        out.println(String.format(
                Locale.ROOT,
                "No plan can cost less than %.0f %s; at most %.0f %% of this plan's cost could be saved. First plan: %.0f.",
                season.bound(),
                currency,
                100 * season.gap(),
                planned.firstCost()));
    }

    /** What one more of everything would save. */
    void oneMore(List<PlannedSeason.OneMoreOf> worth) {
        out.println();
        out.println("What one more would save in this season:");
        worth.forEach(w -> out.println(String.format(Locale.ROOT, "  %8.0f %s  %s", w.saves(), currency, w.what())));
    }

    private void visits() {
        TextTable table = new TextTable("from", "until", "boat", "visit", "ashore", "people", "state");
        for (DatedVisit v : season.visits()) {
            table.row(
                    DAY.format(v.from()),
                    DAY.format(v.until()),
                    v.boatName(),
                    v.visit(),
                    ashore(v),
                    String.join(
                            ", ",
                            v.operations().stream()
                                    .flatMap(o -> o.people().stream())
                                    .distinct()
                                    .toList()),
                    v.state().words());
        }
        table.print(out);
    }

    private static String ashore(DatedVisit visit) {
        LocalDateTime from = visit.ashoreFrom();
        LocalDateTime until = visit.ashoreUntil();
        return from == null || until == null
                ? ""
                : java.time.temporal.ChronoUnit.DAYS.between(from, until) + " days, " + visit.placeClass();
    }

    private void operations() {
        TextTable table = new TextTable("day", "from", "to", "boat", "operation", "by", "state", "why");
        for (DatedOperation o : season.operations()) {
            table.row(
                    DAY.format(o.from()),
                    HOUR.format(o.from()),
                    HOUR.format(o.until()),
                    o.meaning().boatName(),
                    o.meaning().operation(),
                    o.hoist().isEmpty() ? String.join(", ", o.people()) : o.hoist(),
                    o.state().words(),
                    o.reason());
        }
        table.print(out);
    }

    /** Two plans side by side: every operation that is on another day, or only in one of them. */
    void compare(List<Published> other, String name) {
        java.util.Map<Object, Published> before = new java.util.LinkedHashMap<>();
        other.forEach(p -> before.put(p.name(), p));
        TextTable table = new TextTable("boat", "visit", "operation", name, "this plan", "why");
        int same = 0;
        int different = 0;
        for (DatedOperation o : season.operations()) {
            Published was = before.remove(o.meaning().name());
            if (was != null && was.date().equals(o.from().toLocalDate())) {
                same++;
                continue;
            }
            different++;
            table.row(
                    o.meaning().boatName(),
                    o.meaning().visit(),
                    o.meaning().operation(),
                    was == null ? "not there" : DAY.format(was.date()),
                    DAY.format(o.from()),
                    o.reason());
        }
        for (Published gone : before.values()) {
            different++;
            table.row(
                    gone.name().boatId(),
                    gone.name().visit(),
                    gone.name().operation(),
                    DAY.format(gone.date()),
                    "not there",
                    "");
        }
        out.println();
        out.println("Side by side with " + name + ": " + same + " operations on the same day, " + different + " not.");
        if (different > 0) {
            table.print(out);
        }
    }
}

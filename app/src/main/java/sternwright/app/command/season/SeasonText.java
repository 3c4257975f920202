package sternwright.app.command.season;

import java.io.PrintWriter;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.time.temporal.TemporalAccessor;
import java.util.Comparator;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import sternwright.app.command.text.Counted;
import sternwright.app.command.text.TextTable;
import sternwright.app.desk.season.PlannedSeason;
import sternwright.app.paper.Figures;
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
    private static final DateTimeFormatter WEEKDAY = DateTimeFormatter.ofPattern("EEE", Locale.ENGLISH);
    private static final DateTimeFormatter HOUR = DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);

    private final PrintWriter out;
    private final PlannedSeason planned;
    private final DatedSeason season;
    private final Currency currency;
    private final Figures figures;

    SeasonText(PrintWriter out, PlannedSeason planned, Figures figures) {
        this.figures = figures;
        this.out = out;
        this.planned = planned;
        season = planned.dated();
        currency = planned.yard().yard().currency();
    }

    void print(boolean everyOperation, List<String> whyUnsafe) {
        head();
        stands(State.UNSAFE, "Not safe against frost in time:");
        whyUnsafe.forEach(line -> out.println("  " + figures.dated(line)));
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
        planned.remarks().forEach(r -> out.println("Mind: " + figures.dated(r)));
    }

    private void head() {
        out.println(planned.yard().yard().name() + ": season " + day(season.from()) + " to "
                + day(season.to()) + ", "
                + Counted.of(
                        season.visits().stream()
                                .map(DatedVisit::boatId)
                                .distinct()
                                .count(),
                        "boat")
                + ", " + Counted.of(season.visits().size(), "visit") + ", "
                + Counted.of(season.operations().size(), "operation") + ". Proved by both judges.");
    }

    /** One line a boat, her worst operation; the list of operations has the others. */
    private void stands(State state, String title) {
        Map<String, List<DatedOperation>> byBoat = season.operations().stream()
                .filter(o -> o.state() == state)
                .collect(Collectors.groupingBy(o -> o.meaning().boatId(), LinkedHashMap::new, Collectors.toList()));
        if (byBoat.isEmpty()) {
            return;
        }
        out.println();
        out.println(title);
        TextTable table = new TextTable("boat", "operation", "date", "why");
        for (List<DatedOperation> operations : byBoat.values()) {
            DatedOperation worst = operations.stream()
                    .max(Comparator.comparingInt(DatedOperation::daysLate))
                    .orElseThrow();
            int others = operations.size() - 1;
            table.row(
                    worst.meaning().boatName(),
                    worst.meaning().operation() + (others == 0 ? "" : " and " + others + " more"),
                    day(worst.from()),
                    figures.dated(worst.reason()));
        }
        table.print(out);
    }

    private void moved() {
        if (season.moved().isEmpty()) {
            return;
        }
        out.println();
        out.println("Promised dates that move, " + season.moved().size() + " of "
                + planned.season().request().promises().size() + ":");
        TextTable table = new TextTable("boat", "operation", "was", "is", "costs", "why");
        for (MovedDate m : season.moved()) {
            table.row(
                    m.boatName(),
                    m.name().operation(),
                    day(m.was()),
                    dayOrGone(m.is()),
                    money(m.price()),
                    figures.dated(m.reason()));
        }
        table.print(out);
    }

    private String day(TemporalAccessor at) {
        return WEEKDAY.format(at) + " " + figures.shortDate(LocalDate.from(at));
    }

    private String dayOrGone(@Nullable LocalDate day) {
        return day == null ? "gone" : day(day);
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
        tight.forEach(b -> out.println("  " + b.name() + ", " + day(b.from()) + " to " + day(b.to())));
    }

    private void costs() {
        CostSplit c = season.cost();
        out.println();
        out.println("Cost " + money(c.total()) + ": frost " + money(c.frost()) + ", promises " + money(c.promises())
                + ", late " + money(c.late()) + ", early " + money(c.early()) + ", overtime " + money(c.overtime())
                + ", unevenness " + money(c.uneven()) + ".");
        out.println("No plan can cost less than " + money(season.bound()) + "; at most "
                + money(Math.max(0, c.total() - season.bound())) + " better is possible ("
                + figures.number(Math.rint(100 * season.gap())) + " % of this plan's cost). First plan: "
                + money(planned.firstCost()) + ".");
    }

    private String money(double amount) {
        return figures.about(amount, currency);
    }

    /** What one more of everything would save. */
    void oneMore(List<PlannedSeason.OneMoreOf> worth) {
        out.println();
        out.println("What one more would save in this season:");
        worth.forEach(w -> out.println(String.format(Locale.ROOT, "  %10s  %s", money(w.saves()), w.what())));
    }

    private void visits() {
        TextTable table = new TextTable("from", "until", "boat", "visit", "ashore", "people", "state");
        for (DatedVisit v : season.visits()) {
            table.row(
                    day(v.from()),
                    day(v.until()),
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
                : Counted.of(ChronoUnit.DAYS.between(from, until), "day") + ", " + visit.placeClass();
    }

    private void operations() {
        TextTable table = new TextTable("day", "from", "to", "boat", "operation", "by", "state", "why");
        for (DatedOperation o : season.operations()) {
            table.row(
                    day(o.from()),
                    HOUR.format(o.from()),
                    HOUR.format(o.until()),
                    o.meaning().boatName(),
                    o.meaning().operation(),
                    o.hoist().isEmpty() ? String.join(", ", o.people()) : o.hoist(),
                    o.state().words(),
                    figures.dated(o.reason()));
        }
        table.print(out);
    }

    /** Two plans side by side: every operation that is on another day, or only in one of them. */
    void compare(List<Published> other, String name) {
        Map<Object, Published> before = new LinkedHashMap<>();
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
                    was == null ? "not there" : day(was.date()),
                    day(o.from()),
                    figures.dated(o.reason()));
        }
        for (Published gone : before.values()) {
            different++;
            table.row(
                    gone.name().boatId(),
                    gone.name().visit(),
                    gone.name().operation(),
                    day(gone.date()),
                    "not there",
                    "");
        }
        out.println();
        out.println("Side by side with " + name + ": " + Counted.of(same, "operation") + " on the same day, "
                + different + " not.");
        if (different > 0) {
            table.print(out);
        }
    }
}

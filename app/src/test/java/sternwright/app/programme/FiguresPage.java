package sternwright.app.programme;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import sternwright.finding.Source;
import sternwright.service.Half;
import sternwright.service.Interval;
import sternwright.service.Modifier;
import sternwright.service.Programme;
import sternwright.service.ReadingAsked;
import sternwright.service.Rule;
import sternwright.service.SupplyNeed;
import sternwright.service.Trigger;

/** Writes docs/figures.md: every figure of a programme with its source and standing. */
final class FiguresPage {
    private final StringBuilder out = new StringBuilder();

    private FiguresPage() {}

    static String of(Programme programme) {
        FiguresPage page = new FiguresPage();
        page.out.append("""
                # Figures of the generic service programme

                Written by `FiguresPageTest` from `app/src/main/resources/sternwright/programmes/generic.yaml`; the build fails if
                the two differ. A maker's manual for the machine in hand leads over every figure here; see
                [programmes.md](programmes.md) for how to put it in.

                Minutes are for one engine with fair access. The weights for planning (share of the price thrown away by doing a
                work early, and what a month late costs on average, as a share of the price) are common practice, no source.

                """);
        programme.rules().forEach(page::rule);
        return page.out.toString();
    }

    private void rule(Rule r) {
        out.append("## ").append(r.work()).append("\n\n");
        out.append("`")
                .append(r.id())
                .append("`")
                .append(r.safety() ? ", safety item" : "")
                .append("\n\n");
        out.append("| figure | value | source |\n| --- | --- | --- |\n");
        row("interval", interval(r), r.source());
        row("half of the year", r.half() == Half.ANY ? "any" : r.half().words(), r.source());
        row("place", r.place().words() + (r.diver() ? "; a diver may do it afloat" : ""), r.source());
        row("minutes", number(r.minutes()), r.source());
        for (Modifier m : r.modifiers()) {
            row(m.when(), m.months() != null ? m.months() + " months instead" : "× " + number(m.factor()), m.source());
        }
        for (ReadingAsked reading : r.readings()) {
            if (reading.low() != null || reading.high() != null) {
                row(reading.label(), limits(reading), reading.source());
            }
        }
        r.supplies().forEach(s -> row(s.item(), taken(s), r.source()));
        out.append("\nPlanning weights: ")
                .append(number(r.materialShare()))
                .append(" thrown away if early, ")
                .append(number(r.riskPerMonthLate()))
                .append(" a month late.\n\n");
    }

    private static String taken(SupplyNeed s) {
        String fixed = s.fixed() > 0 ? number(s.fixed()) : "";
        String perLitre = s.perCapacity() > 0
                ? number(s.perCapacity()) + " for each litre it holds; " + number(s.ifUnknownL())
                        + " L allowed if that is not known"
                : "";
        return fixed.isEmpty() || perLitre.isEmpty() ? fixed + perLitre : fixed + " and " + perLitre;
    }

    private void row(String figure, String value, Source source) {
        out.append("| ").append(figure).append(" | ").append(value).append(" | ");
        out.append(source.line()).append(" |\n");
    }

    private static String interval(Rule r) {
        Interval i = r.interval();
        List<String> parts = new ArrayList<>();
        add(parts, i.months(), " months");
        add(parts, i.hours(), " engine hours");
        add(parts, i.lifeMonths(), " months of life");
        if (i.everyNth() != null) {
            parts.add("every " + i.everyNth().n() + "th `" + i.everyNth().ruleId() + "`");
        }
        if (i.occasion() != null) {
            parts.add(i.occasion().name().toLowerCase(Locale.ROOT).replace('_', ' '));
        }
        i.after().forEach(a -> parts.add("after `" + a + "`"));
        if (i.unlessLastsTo() != null) {
            parts.add("with `" + i.unlessLastsTo() + "` unless it lasts to the next one");
        }
        for (Trigger t : r.triggers()) {
            parts.add("at once when `" + t.reading() + "` is"
                    + (t.atMost() != null ? " at most " + number(t.atMost()) : "")
                    + (t.atLeast() != null ? " at least " + number(t.atLeast()) : ""));
        }
        return String.join("; ", parts);
    }

    private static void add(List<String> parts, @Nullable Number value, String unit) {
        if (value != null) {
            parts.add(number(value.doubleValue()) + unit);
        }
    }

    private static String limits(ReadingAsked r) {
        String unit = r.unit().equals("1") ? "" : " " + r.unit();
        String low = r.low() == null ? "" : "at least " + number(r.low()) + unit;
        String high = r.high() == null ? "" : "at most " + number(r.high()) + unit;
        return List.of(low, high).stream().filter(s -> !s.isEmpty()).collect(Collectors.joining(", "));
    }

    private static String number(double value) {
        return value == Math.rint(value) ? String.valueOf((long) value) : String.valueOf(value);
    }
}

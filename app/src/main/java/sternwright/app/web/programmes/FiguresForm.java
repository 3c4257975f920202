package sternwright.app.web.programmes;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import sternwright.app.desk.settings.Overridings;
import sternwright.app.web.entry.Entered;
import sternwright.app.web.page.Field;
import sternwright.app.web.page.Page;
import sternwright.finding.Source;
import sternwright.finding.Standing;
import sternwright.service.Half;
import sternwright.service.IntervalClause;
import sternwright.service.Overriding;
import sternwright.service.Place;

/** Figures over those of a rule, as they stand in the form and as they were typed. */
final class FiguresForm {
    /** Where a fault that the reader of the file finds is shown; the longer ends first. */
    static final Map<String, String> FIELDS = fields();

    private FiguresForm() {}

    private static Map<String, String> fields() {
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put("life-months", "life");
        fields.put("months", "months");
        fields.put("hours", "hours");
        fields.put("nth", "nth");
        fields.put("half", "half");
        fields.put("source.place", "sourcePlace");
        fields.put("place", "place");
        fields.put("minutes", "minutes");
        fields.put("drop", "dropMonths");
        fields.put("title", "sourceTitle");
        fields.put("standing", "standing");
        return fields;
    }

    static Map<String, String> stands(Page page, Optional<Overriding> there) {
        Map<String, String> values = new LinkedHashMap<>();
        values.put("sourceTitle", page.say("programmes.source.own"));
        values.put("standing", Standing.YARD.name());
        there.ifPresent(o -> {
            values.put("months", Entered.plain(o.months()));
            values.put("hours", Entered.plain(o.hours()));
            values.put("life", Entered.plain(o.lifeMonths()));
            values.put("nth", Entered.plain(o.nth()));
            values.put("half", name(o.half()));
            values.put("place", name(o.place()));
            values.put("minutes", Entered.plain(o.minutes()));
            values.put("off", Boolean.toString(!o.applies()));
            o.drop().forEach(c -> values.put(drop(c), "true"));
            values.put("sourceTitle", o.source().title());
            values.put("sourcePlace", o.source().place());
            values.put("standing", o.source().standing().name());
        });
        return values;
    }

    private static String name(@Nullable Enum<?> one) {
        return one == null ? "" : one.name();
    }

    static String drop(IntervalClause clause) {
        return switch (clause) {
            case MONTHS -> "dropMonths";
            case HOURS -> "dropHours";
            case LIFE_MONTHS -> "dropLife";
        };
    }

    /** What was typed; use it only if nothing is wrong. */
    static Overriding typed(Page page, Entered form, Overridings.Key key) {
        Set<IntervalClause> drop = EnumSet.noneOf(IntervalClause.class);
        for (IntervalClause clause : IntervalClause.values()) {
            if (form.ticked(drop(clause))) {
                drop.add(clause);
            }
        }
        Overriding o = new Overriding(
                key.ruleId(),
                key.scope(),
                key.target(),
                form.whole("months"),
                form.number("hours"),
                form.whole("life"),
                form.whole("nth"),
                drop,
                chosen(form, "half", Half.values()),
                chosen(form, "place", Place.values()),
                form.number("minutes"),
                !form.ticked("off"),
                new Source(
                        form.needed("sourceTitle"),
                        form.text("sourcePlace"),
                        Optional.ofNullable(chosen(form, "standing", Standing.values()))
                                .orElse(Standing.YARD)));
        boolean says = !o.figures().isEmpty() || !o.applies();
        if (form.good() && !says) {
            form.wrong("months", page.say("programmes.nothing"));
        }
        return o;
    }

    private static <E extends Enum<E>> @Nullable E chosen(Entered form, String field, E[] all) {
        return Arrays.stream(all)
                .filter(e -> e.name().equals(form.text(field)))
                .findFirst()
                .orElse(null);
    }

    static List<Field.Choice> choices(Page page, String prefix, Enum<?>[] all) {
        return Arrays.stream(all)
                .map(e -> new Field.Choice(
                        e.name(),
                        page.say(prefix + "."
                                        + e.name().toLowerCase(Locale.ROOT).replace('_', '-'))
                                .replaceFirst("[.]$", "")))
                .toList();
    }
}

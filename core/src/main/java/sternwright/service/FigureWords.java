package sternwright.service;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Figures of rules and overridings in a few words, for the chain of sources. */
final class FigureWords {
    private final List<String> words = new ArrayList<>();

    private FigureWords() {}

    /** What a rule says by itself of when it is due. */
    static String of(Rule rule) {
        Interval i = rule.interval();
        FigureWords w = new FigureWords();
        w.interval(i.months(), i.hours(), i.lifeMonths());
        EveryNth nth = i.everyNth();
        w.nth(nth == null ? null : (Integer) nth.n());
        return w.line();
    }

    /** What an overriding changes. */
    static String of(Overriding over) {
        FigureWords w = new FigureWords();
        w.interval(over.months(), over.hours(), over.lifeMonths());
        w.nth(over.nth());
        over.drop().stream().sorted().forEach(c -> w.words.add("no " + c.field().replace("life-months", "life")));
        Half half = over.half();
        w.add(half == null ? null : half.words());
        Place place = over.place();
        w.add(place == null ? null : place.words());
        Double minutes = over.minutes();
        w.add(minutes == null ? null : number(minutes) + " min");
        return w.line();
    }

    private void interval(@Nullable Integer months, @Nullable Double hours, @Nullable Integer life) {
        add(months == null ? null : counted(months, "month"));
        add(hours == null ? null : number(hours) + " h");
        add(life == null ? null : "life " + counted(life, "month"));
    }

    private void nth(@Nullable Integer n) {
        add(n == null ? null : "every " + n + ". time");
    }

    private void add(@Nullable String text) {
        if (text != null) {
            words.add(text);
        }
    }

    private String line() {
        return String.join(", ", words);
    }

    private static String counted(int count, String one) {
        return count + " " + one + (count == 1 ? "" : "s");
    }

    private static String number(double value) {
        return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
    }
}

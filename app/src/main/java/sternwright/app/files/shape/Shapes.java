package sternwright.app.files.shape;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.nodes.Tag;
import sternwright.finding.NearestName;

/** The shapes of single values. */
public final class Shapes {
    private static final Set<Tag> TEXT = Set.of(Tag.STR);
    private static final String ID = "[a-z0-9][a-z0-9._-]*";
    private static final String MONTH_DAY = "(0[1-9]|1[0-2])-(0[1-9]|[12][0-9]|3[01])";

    private Shapes() {}

    /**
     * Free text.
     *
     * @return the shape
     */
    public static Shape<String> text() {
        return new Scalar<>("text", TEXT, t -> t.isBlank() ? null : t, t -> t, textSchema("pattern", "\\S"), t -> "");
    }

    /**
     * Free text that may be empty.
     *
     * @return the shape
     */
    public static Shape<String> anyText() {
        return new Scalar<>("text", TEXT, t -> t, t -> t, Map.of("type", "string"), t -> "");
    }

    /**
     * A short name by which other fields and files refer to a thing.
     *
     * @return the shape
     */
    public static Shape<String> id() {
        return matching("a short name", ID, "Use lower-case letters, digits, hyphen, dot or underscore, no spaces.");
    }

    /**
     * A short name that stands for a thing in another file.
     *
     * @param what the kind of thing, as it follows "there is no"
     * @return the shape
     */
    public static Shape<String> nameOf(String what) {
        return new Reference(what);
    }

    /**
     * Text of a given form.
     *
     * @param words what it is
     * @param regex the whole text must match
     * @param advice what to do if it does not
     * @return the shape
     */
    public static Shape<String> matching(String words, String regex, String advice) {
        Pattern pattern = Pattern.compile(regex);
        return new Scalar<>(
                words,
                TEXT,
                t -> pattern.matcher(t).matches() ? t : null,
                t -> t,
                textSchema("pattern", "^(" + regex + ")$"),
                t -> advice);
    }

    /**
     * Yes or no.
     *
     * @return the shape
     */
    public static Shape<Boolean> yesNo() {
        return new Scalar<>(
                "true or false",
                Set.of(Tag.BOOL),
                Boolean::valueOf,
                b -> b,
                Map.of("type", "boolean"),
                t -> "Write true or false without quotes.");
    }

    /**
     * A date in the calendar, ISO 8601.
     *
     * @return the shape
     */
    public static Shape<LocalDate> date() {
        return new Scalar<>(
                "a date such as 2021-09-30",
                TEXT,
                parsed(LocalDate::parse),
                LocalDate::toString,
                textSchema("format", "date"),
                t -> "Write year, month and day with hyphens.");
    }

    /**
     * A date that cannot lie in the future.
     *
     * @return the shape
     */
    public static Shape<LocalDate> pastDate() {
        return new PastDate(date());
    }

    /**
     * A day of every year, {@code MM-DD}.
     *
     * @return the shape
     */
    public static Shape<MonthDay> monthDay() {
        return new Scalar<>(
                "a day of the year such as 11-15 (month, day)",
                TEXT,
                parsed(t -> MonthDay.parse("--" + t)),
                d -> d.toString().substring(2),
                textSchema("pattern", "^" + MONTH_DAY + "$"),
                t -> "Write month and day as two digits each with a hyphen.");
    }

    /**
     * One of the names of an enum, in lower case with hyphens.
     *
     * @param <E> the enum
     * @param type its class
     * @return the shape
     */
    public static <E extends Enum<E>> Shape<E> oneOf(Class<E> type) {
        Map<String, E> byName = new LinkedHashMap<>();
        Stream.of(type.getEnumConstants()).forEach(e -> byName.put(kebab(e), e));
        return oneOf(byName, Shapes::kebab);
    }

    /**
     * One of some words.
     *
     * @param <E> what a word stands for
     * @param byName the words in order
     * @param name the word of a value
     * @return the shape
     */
    public static <E> Shape<E> oneOf(Map<String, E> byName, Function<E, String> name) {
        List<String> names = List.copyOf(byName.keySet());
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("type", "string");
        schema.put("enum", names);
        return new Scalar<>(
                "one of " + String.join(", ", names),
                TEXT,
                byName::get,
                name::apply,
                schema,
                t -> NearestName.of(t, names)
                        .map(n -> "Perhaps \"" + n + "\" is meant.")
                        .orElse(""));
    }

    /**
     * The name of an enum constant as files write it.
     *
     * @param constant the constant
     * @return lower case with hyphens
     */
    public static String kebab(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Turns a parser that throws into one that answers null. */
    static <T> Function<String, @Nullable T> parsed(Function<String, T> parser) {
        return text -> {
            try {
                return parser.apply(text);
            } catch (DateTimeException | IllegalArgumentException wrong) {
                return null;
            }
        };
    }

    /**
     * Text that a parser of the JDK understands, such as a currency.
     *
     * @param <T> what it is read to
     * @param words what it is
     * @param regex form of the text, for the schema
     * @param parser throws {@link IllegalArgumentException} on what it does not understand
     * @param advice what to do
     * @return the shape
     */
    public static <T> Shape<T> parsedText(String words, String regex, Function<String, T> parser, String advice) {
        return new Scalar<>(
                words, TEXT, parsed(parser), Object::toString, textSchema("pattern", "^" + regex + "$"), t -> advice);
    }

    private static Map<String, Object> textSchema(String keyword, String value) {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("type", "string");
        schema.put(keyword, value);
        return schema;
    }
}

package sternwright.app.web.entry;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.problem.Problem;
import sternwright.app.paper.Words;
import sternwright.app.web.page.Field;
import sternwright.app.web.page.Form;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.TypedDay;
import sternwright.app.web.page.TypedNumber;

/** A form as it stands or as it was typed, with what is wrong. Labels and hints are the words under one prefix. */
public final class Entered {
    private static final int LONGEST = 200;

    private final Page page;
    private final String prefix;
    private final boolean sent;
    private final Map<String, String> stands = new LinkedHashMap<>();
    private final Map<String, String> wrong = new LinkedHashMap<>();
    private final Map<String, String> labels = new LinkedHashMap<>();
    private final List<Problem> elsewhere = new ArrayList<>();

    private Entered(Page page, String prefix, boolean sent) {
        this.page = page;
        this.prefix = prefix;
        this.sent = sent;
    }

    /**
     * A form that shows how things stand.
     *
     * @param page the page
     * @param prefix prefix of its words
     * @param values by field
     * @return the form
     */
    public static Entered stands(Page page, String prefix, Map<String, String> values) {
        Entered form = new Entered(page, prefix, false);
        form.stands.putAll(values);
        return form;
    }

    /**
     * A form that was sent.
     *
     * @param page the page
     * @param prefix prefix of its words
     * @return the form
     */
    public static Entered sent(Page page, String prefix) {
        return new Entered(page, prefix, true);
    }

    /**
     * A number as it stands in a field: with a point and without marks between thousands, so that it is read back as it is.
     *
     * @param value the number, null for none
     * @return such as 1234.5; empty for none
     */
    public static String plain(@Nullable Number value) {
        return value == null
                ? ""
                : new BigDecimal(value.toString()).stripTrailingZeros().toPlainString();
    }

    /**
     * What stands in a field.
     *
     * @param name the field
     * @return as typed, without blanks around it
     */
    public String text(String name) {
        return sent ? Optional.ofNullable(page.typed(name)).orElse("").strip() : stands.getOrDefault(name, "");
    }

    /**
     * How many rows of fields there are, as sent or as they stand.
     *
     * @param field the field of a row, without its number
     * @param blank rows to be added to those that stand
     * @return the number of rows to show
     */
    public int rows(String field, int blank) {
        int rows = 0;
        while (sent ? page.typed(field + rows) != null : stands.containsKey(field + rows)) {
            rows++;
        }
        return sent ? rows : rows + blank;
    }

    /**
     * Text that must be there.
     *
     * @param name the field
     * @return as typed; if it is empty that is noted
     */
    public String needed(String name) {
        if (text(name).isEmpty()) {
            wrong(name, page.say("field.NotBlank"));
        } else if (text(name).length() > LONGEST) {
            wrong(name, page.say("field.Size", LONGEST));
        }
        return text(name);
    }

    /**
     * Whether a box is ticked.
     *
     * @param name the field
     * @return true if it is
     */
    public boolean ticked(String name) {
        return text(name).equals("true");
    }

    /**
     * A number that need not be there.
     *
     * @param name the field
     * @return null if nothing was typed, or what cannot be read, which is noted
     */
    public @Nullable Double number(String name) {
        String typed = text(name);
        OptionalDouble number = TypedNumber.of(typed);
        boolean figure = number.isPresent() && Double.isFinite(number.getAsDouble());
        if (!typed.isEmpty() && !figure) {
            wrong(name, page.say("field.number"));
        }
        return figure ? (Double) number.getAsDouble() : null;
    }

    /**
     * A whole number that need not be there.
     *
     * @param name the field
     * @return null if nothing was typed, or what is no whole number, which is noted
     */
    public @Nullable Integer whole(String name) {
        Double number = number(name);
        if (number != null && (number != Math.rint(number) || Math.abs(number) > Integer.MAX_VALUE)) {
            wrong(name, page.say("field.whole"));
            return null;
        }
        return number == null ? null : (Integer) number.intValue();
    }

    /**
     * A number that must be there.
     *
     * @param name the field
     * @return 0 if it is missing or cannot be read, which is noted
     */
    public double figure(String name) {
        Double number = number(name);
        if (number == null && !wrong.containsKey(name)) {
            wrong(name, page.say("field.NotBlank"));
        }
        return number == null ? 0 : number;
    }

    /**
     * A whole number that must be there.
     *
     * @param name the field
     * @return 0 if it is missing or no whole number, which is noted
     */
    public int count(String name) {
        Integer number = whole(name);
        if (number == null && !wrong.containsKey(name)) {
            wrong(name, page.say("field.NotBlank"));
        }
        return number == null ? 0 : number;
    }

    /**
     * A day that need not be there.
     *
     * @param name the field
     * @return null if nothing was typed, or what is no day, which is noted
     */
    public @Nullable LocalDate day(String name) {
        String typed = text(name);
        Optional<LocalDate> day = typed.matches("\\d{4}-\\d{1,2}-\\d{1,2}") ? TypedDay.of(typed) : Optional.empty();
        if (!typed.isEmpty() && day.isEmpty()) {
            wrong(name, page.say("field.day"));
        }
        return day.orElse(null);
    }

    /**
     * Notes what is wrong with a field; the first fault of a field is the one that is shown.
     *
     * @param name the field
     * @param words what is wrong and what to do
     */
    public void wrong(String name, String words) {
        wrong.putIfAbsent(name, words);
    }

    /**
     * Whether nothing is wrong so far.
     *
     * @return true if all can be taken
     */
    public boolean good() {
        return wrong.isEmpty() && elsewhere.isEmpty();
    }

    /**
     * Notes what the reader of a file found: beside the field it was typed into, or, where no field is meant, above the form with its
     * place.
     *
     * @param bad what is wrong
     * @param fields form fields by the end of the path in the file
     */
    public void refused(BadInput bad, Map<String, String> fields) {
        for (Problem p : bad.problems()) {
            String field = fields.entrySet().stream()
                    .filter(e -> p.field().endsWith(e.getKey()))
                    .map(Map.Entry::getValue)
                    .findFirst()
                    .orElse("");
            if (field.isEmpty()) {
                elsewhere.add(p);
            } else {
                wrong(field, said(p));
            }
        }
    }

    private String said(Problem p) {
        String found = p.found().isEmpty() ? p.advice() : p.found();
        String words = p.expected().isEmpty()
                ? Words.sentence(found)
                : page.say("field.refused", Words.sentence(found), p.expected());
        return words.endsWith(".") ? words : words + ".";
    }

    /**
     * Gives a field a label of its own, such as one field of a row.
     *
     * @param name the field
     * @param label what to fill in
     */
    public void label(String name, String label) {
        labels.put(name, label);
    }

    /**
     * One field; required text unless the template says otherwise.
     *
     * @param name its name
     * @return the field
     */
    public Field field(String name) {
        String label = Optional.ofNullable(labels.get(name))
                .orElseGet(
                        () -> page.words().find(prefix + "." + name + ".label").orElse(name));
        String hint = page.words().find(prefix + "." + name + ".hint").orElse("");
        return new Field(name, label, hint, text(name), wrong.getOrDefault(name, ""), "text", true, "", "", List.of());
    }

    /**
     * Everything that is wrong with fields, for the summary above the form.
     *
     * @return one entry a field
     */
    public List<Form.Wrong> wrongs() {
        return wrong.entrySet().stream()
                .map(e -> new Form.Wrong(e.getKey(), field(e.getKey()).label(), e.getValue()))
                .toList();
    }

    /**
     * What is wrong in places that are no fields of the form.
     *
     * @return problems with their places in files
     */
    public List<Problem> problems() {
        return List.copyOf(elsewhere);
    }
}

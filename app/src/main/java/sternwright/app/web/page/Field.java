package sternwright.app.web.page;

import java.util.List;

/**
 * One field of a form, as the part {@code web/part/field.jte} shows it.
 *
 * @param name name it is sent by; also the root of the ids in the page
 * @param label what to fill in
 * @param hint how, may be empty
 * @param value what stands in it, as typed
 * @param error what is wrong with it and what to do; empty if nothing is
 * @param kind text, password, date, number, email, tel, area, select, boat or check
 * @param required whether it must be filled
 * @param unit the unit behind it, may be empty
 * @param autocomplete what browsers may fill in by themselves, such as {@code username}; may be empty
 * @param choices what a select offers
 */
public record Field(
        String name,
        String label,
        String hint,
        String value,
        String error,
        String kind,
        boolean required,
        String unit,
        String autocomplete,
        List<Choice> choices) {
    /**
     * One choice of a select.
     *
     * @param value what is sent
     * @param label what is read
     */
    public record Choice(String value, String label) {}

    /** Copies the list. */
    public Field {
        choices = List.copyOf(choices);
    }

    /**
     * A field outside a form of its own, such as one that narrows a list.
     *
     * @param name its name
     * @param label what to fill in
     * @param value what stands in it
     * @return the field
     */
    public static Field plain(String name, String label, String value) {
        return new Field(name, label, "", value, "", "text", true, "", "", List.of());
    }

    /**
     * The same field of another kind.
     *
     * @param other text, password, date, number, email, tel, area, select, boat or check
     * @return the field
     */
    public Field as(String other) {
        return new Field(name, label, hint, value, error, other, required, unit, autocomplete, choices);
    }

    /**
     * The same field, which may stay empty.
     *
     * @return the field
     */
    public Field optional() {
        return new Field(name, label, hint, value, error, kind, false, unit, autocomplete, choices);
    }

    /**
     * The same field with a unit behind it.
     *
     * @param other the unit
     * @return the field
     */
    public Field in(String other) {
        return new Field(name, label, hint, value, error, kind, required, other, autocomplete, choices);
    }

    /**
     * The same field that browsers may fill.
     *
     * @param other a word of the HTML standard, such as {@code current-password}
     * @return the field
     */
    public Field filledBy(String other) {
        return new Field(name, label, hint, value, error, kind, required, unit, other, choices);
    }

    /**
     * The same field as a choice.
     *
     * @param offered the choices
     * @return the field
     */
    public Field of(List<Choice> offered) {
        return new Field(name, label, hint, value, error, "select", required, unit, autocomplete, offered);
    }

    /**
     * Ids of what describes it, for screen readers.
     *
     * @return one or two ids, empty if nothing describes it
     */
    public String describedBy() {
        String ids = (hint.isEmpty() ? "" : name + "-hint ") + (error.isEmpty() ? "" : name + "-error");
        return ids.strip();
    }
}

package sternwright.app.files.shape;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A named field of a block.
 *
 * @param <R> the record the block is read to
 * @param <V> the value of the field
 */
public final class Field<R, V> {
    /**
     * Takes the value out of the record again.
     *
     * @param <R> the record
     * @param <V> the value
     */
    public interface Getter<R, V> {
        /**
         * The value.
         *
         * @param owner the record
         * @return the value, null if not known
         */
        @Nullable
        V from(R owner);
    }

    final String name;
    final String meaning;
    final Shape<V> shape;
    final Getter<R, V> getter;
    private final boolean text;
    final boolean required;
    final @Nullable V fallback;

    private Field(
            String name, Shape<V> shape, Getter<R, V> getter, boolean required, @Nullable V fallback, String meaning) {
        this.name = name;
        this.meaning = meaning;
        this.shape = shape;
        this.getter = getter;
        this.text =
                !List.of("number", "integer", "boolean").contains(shape.schema().get("type"));
        this.required = required;
        this.fallback = fallback;
    }

    /**
     * A field that must be there.
     *
     * @param <R> the record
     * @param <V> the value
     * @param name as written in the file
     * @param shape what it looks like
     * @param getter takes it out of the record
     * @param meaning for schema and documentation
     * @return the field
     */
    public static <R, V> Field<R, V> required(String name, Shape<V> shape, Getter<R, V> getter, String meaning) {
        return new Field<>(name, shape, getter, true, null, meaning);
    }

    /**
     * A field that may be left out or left empty: not known.
     *
     * @param <R> the record
     * @param <V> the value
     * @param name as written in the file
     * @param shape what it looks like
     * @param getter takes it out of the record
     * @param meaning for schema and documentation
     * @return the field
     */
    public static <R, V> Field<R, V> optional(String name, Shape<V> shape, Getter<R, V> getter, String meaning) {
        return new Field<>(name, shape, getter, false, null, meaning);
    }

    /**
     * A field with a value of its own if it is left out.
     *
     * @param <R> the record
     * @param <V> the value
     * @param name as written in the file
     * @param shape what it looks like
     * @param fallback the value if left out
     * @param getter takes it out of the record
     * @param meaning for schema and documentation
     * @return the field
     */
    public static <R, V> Field<R, V> or(String name, Shape<V> shape, V fallback, Getter<R, V> getter, String meaning) {
        return new Field<>(name, shape, getter, false, fallback, meaning);
    }

    /**
     * The name as written in the file.
     *
     * @return lower case with hyphens
     */
    public String name() {
        return name;
    }

    /**
     * What the field means.
     *
     * @return a phrase
     */
    public String meaning() {
        return meaning;
    }

    /**
     * Whether a bare figure in a table is meant as text here.
     *
     * @return true for text, false for numbers and truth values
     */
    public boolean isText() {
        return text;
    }

    /**
     * Whether the field must be there.
     *
     * @return true if it cannot be left out
     */
    public boolean required() {
        return required;
    }

    /**
     * Whether the field is written for a record: it holds something else than what stands for a field that is left out.
     *
     * @param owner the record
     * @return false if it is left out
     */
    public boolean writes(R owner) {
        V value = getter.from(owner);
        return value != null && !value.equals(fallback);
    }
}

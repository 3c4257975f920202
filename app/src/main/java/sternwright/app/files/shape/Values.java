package sternwright.app.files.shape;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What was read for the fields of one block.
 *
 * @param <R> the record the block is read to
 */
public final class Values<R> {
    private final List<Field<R, ?>> fields;
    private final @Nullable Object[] values;

    Values(List<Field<R, ?>> fields, @Nullable Object[] values) {
        this.fields = fields;
        this.values = values;
    }

    /**
     * The value of a field that is required or has a value of its own.
     *
     * @param <V> the value
     * @param field the field
     * @return the value
     */
    public <V> V get(Field<R, V> field) {
        V value = orNull(field);
        if (value == null) {
            throw new IllegalStateException("field " + field.name + " may be missing: ask with orNull");
        }
        return value;
    }

    /**
     * The value of a field that may be left out.
     *
     * @param <V> the value
     * @param field the field
     * @return the value, null if not known
     */
    @SuppressWarnings("unchecked") // a field's slot only ever holds what the field's own shape read
    public <V> @Nullable V orNull(Field<R, V> field) {
        return (V) values[fields.indexOf(field)];
    }
}

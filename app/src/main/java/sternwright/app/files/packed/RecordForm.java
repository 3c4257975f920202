package sternwright.app.files.packed;

import java.lang.reflect.Constructor;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** A record, component by component. */
final class RecordForm implements Form {
    private static final int NONE = 0;
    private static final int THERE = 1;

    private final Constructor<?> constructor;
    private final Method[] accessors;
    private final Form[] forms;

    RecordForm(Class<?> kind, Forms all) {
        RecordComponent[] components = kind.getRecordComponents();
        try {
            constructor = kind.getDeclaredConstructor(
                    Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new));
        } catch (NoSuchMethodException e) {
            throw new IllegalArgumentException("every record has this constructor", e);
        }
        // A record that only its package knows is packed like any other.
        constructor.setAccessible(true);
        accessors = Arrays.stream(components).map(RecordComponent::getAccessor).toArray(Method[]::new);
        Arrays.stream(accessors).forEach(a -> a.setAccessible(true));
        forms = Arrays.stream(components).map(c -> all.of(c.getGenericType())).toArray(Form[]::new);
    }

    @Override
    public void write(@Nullable Object value, PackedOut out) {
        if (value == null) {
            out.octet(NONE);
            return;
        }
        out.octet(THERE);
        try {
            for (int i = 0; i < forms.length; i++) {
                forms[i].write(accessors[i].invoke(value), out);
            }
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(value.getClass() + " cannot be packed", e);
        }
    }

    @Override
    public @Nullable Object read(PackedIn in) {
        if (in.octet() == NONE) {
            return null;
        }
        Object[] values = new Object[forms.length];
        for (int i = 0; i < forms.length; i++) {
            values[i] = forms[i].read(in);
        }
        try {
            return constructor.newInstance(values);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(constructor + " refuses what was packed", e);
        }
    }
}

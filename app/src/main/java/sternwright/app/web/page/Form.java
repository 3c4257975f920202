package sternwright.app.web.page;

import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.validation.BindingResult;
import org.springframework.validation.FieldError;

/**
 * A form with what was typed and what is wrong with it. Its words stand under one prefix: {@code people.role.label},
 * {@code people.role.hint}. What is wrong is worded by the code of the constraint: {@code people.name.taken}, or for every
 * form {@code field.NotBlank}.
 */
public final class Form {
    private final Page page;
    private final String prefix;

    @Nullable
    private final Object before;

    @Nullable
    private final BindingResult typed;

    private Form(Page page, String prefix, @Nullable Object before, @Nullable BindingResult typed) {
        this.page = page;
        this.prefix = prefix;
        this.before = before;
        this.typed = typed;
    }

    /**
     * A form not yet filled in.
     *
     * @param page the page it stands on
     * @param prefix prefix of its words
     * @return the form
     */
    public static Form blank(Page page, String prefix) {
        return new Form(page, prefix, null, null);
    }

    /**
     * A form that shows how things stand.
     *
     * @param page the page it stands on
     * @param prefix prefix of its words
     * @param before a record whose components are named like the fields
     * @return the form
     */
    public static Form of(Page page, String prefix, Record before) {
        return new Form(page, prefix, before, null);
    }

    /**
     * A form that was sent and cannot be taken as it is.
     *
     * @param page the page it stands on
     * @param prefix prefix of its words
     * @param typed what Spring made of it
     * @return the form
     */
    public static Form typed(Page page, String prefix, BindingResult typed) {
        return new Form(page, prefix, null, typed);
    }

    /**
     * One field; required text unless the template says otherwise.
     *
     * @param name its name
     * @return the field
     */
    public Field field(String name) {
        String label = page.say(prefix + "." + name + ".label");
        String hint = page.words().find(prefix + "." + name + ".hint").orElse("");
        return new Field(name, label, hint, value(name), error(name), "text", true, "", "", List.of());
    }

    /**
     * Everything that is wrong, for the summary above the form.
     *
     * @return one entry a field
     */
    public List<Wrong> wrong() {
        if (typed == null) {
            return List.of();
        }
        return typed.getFieldErrors().stream()
                .map(FieldError::getField)
                .distinct()
                .map(f -> new Wrong(f, label(f), error(f)))
                .toList();
    }

    /** What nobody fills in, such as the version a form carries along, has no label. */
    private String label(String name) {
        return page.words().find(prefix + "." + name + ".label").orElseGet(() -> page.say("field.form"));
    }

    /**
     * One thing that is wrong.
     *
     * @param field the field
     * @param label its label
     * @param error what is wrong and what to do
     */
    public record Wrong(String field, String label, String error) {}

    private String value(String name) {
        if (typed != null) {
            return Optional.ofNullable(page.typed(name)).orElse("");
        }
        return before == null ? "" : component(before, name);
    }

    private static String component(Object before, String name) {
        RecordComponent component = Arrays.stream(before.getClass().getRecordComponents())
                .filter(c -> c.getName().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(before.getClass() + " has no " + name));
        try {
            var accessor = component.getAccessor();
            accessor.setAccessible(true);
            Object value = accessor.invoke(before);
            return value == null ? "" : value.toString();
        } catch (ReflectiveOperationException e) {
            throw new IllegalArgumentException("cannot read " + name, e);
        }
    }

    private String error(String name) {
        FieldError error = typed == null ? null : typed.getFieldError(name);
        if (error == null || error.getCode() == null) {
            return "";
        }
        Object[] values = values(error);
        String own = prefix + "." + name + "." + error.getCode();
        if (page.words().find(own).isPresent()) {
            return page.say(own, values);
        }
        return page.words().find("field." + error.getCode()).isPresent()
                ? page.say("field." + error.getCode(), values)
                : page.say("field.other");
    }

    /** The figures of a constraint, such as its least and most, without the name of the field that Spring puts first. */
    private static Object[] values(FieldError error) {
        Object[] given = error.getArguments();
        return given == null
                ? new Object[0]
                : Arrays.stream(given)
                        .filter(a -> !(a instanceof org.springframework.context.MessageSourceResolvable))
                        .toArray();
    }
}

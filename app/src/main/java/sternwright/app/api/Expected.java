package sternwright.app.api;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What kind of value a field or a name of an address takes, in plain words. */
final class Expected {
    private Expected() {}

    /** A phrase such as {@code a whole number}; empty where no kind is known. */
    static String of(@Nullable Class<?> type) {
        if (type == null) {
            return "";
        }
        if (type == int.class || type == Integer.class || type == long.class || type == Long.class) {
            return "a whole number";
        }
        if (type == double.class || type == Double.class) {
            return "a number such as 2.5";
        }
        if (type == boolean.class || type == Boolean.class) {
            return "true or false";
        }
        if (type == LocalDate.class) {
            return "a day such as 2027-01-31";
        }
        return type.isEnum()
                ? oneOf(type)
                : "a value of kind " + type.getSimpleName().toLowerCase(Locale.ROOT);
    }

    private static String oneOf(Class<?> type) {
        return Arrays.stream(type.getEnumConstants())
                .map(String::valueOf)
                .collect(Collectors.joining(", ", "one of ", ""));
    }
}

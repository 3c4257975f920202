package sternwright.app.web.page;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A day as people know it: a whole date as year-month-day, a month as year-month, or a year alone. Of a month or a year the first
 * day is taken: a part is then rather taken for older than for younger.
 */
public final class TypedDay {
    private static final Pattern DAY = Pattern.compile("(\\d{4})(?:-(\\d{1,2})(?:-(\\d{1,2}))?)?");
    private static final int EARLIEST = 1900;

    private TypedDay() {}

    /**
     * Reads it.
     *
     * @param typed what was typed
     * @return the day, empty if nothing was typed or it cannot be read
     */
    public static Optional<LocalDate> of(String typed) {
        Matcher m = DAY.matcher(typed.strip());
        if (!m.matches() || Integer.parseInt(m.group(1)) < EARLIEST) {
            return Optional.empty();
        }
        try {
            return Optional.of(LocalDate.of(Integer.parseInt(m.group(1)), number(m.group(2)), number(m.group(3))));
        } catch (DateTimeException none) {
            return Optional.empty();
        }
    }

    private static int number(@org.jspecify.annotations.Nullable String digits) {
        return digits == null ? 1 : Integer.parseInt(digits);
    }
}

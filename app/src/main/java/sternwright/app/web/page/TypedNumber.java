package sternwright.app.web.page;

import java.util.OptionalDouble;
import java.util.regex.Pattern;

/**
 * A number as people type it, with a decimal point or a decimal comma, with or without marks between the thousands: 1234.5, 1234,5
 * and 1,234.5 are the same. A lone point is always the decimal mark; a lone comma before exactly three figures parts thousands,
 * unless a nought leads.
 */
public final class TypedNumber {
    private static final Pattern PLAIN = Pattern.compile("-?\\d+([.,]\\d+)?");
    private static final Pattern PARTED =
            Pattern.compile("-?[1-9]\\d{0,2}([.,' \\u00a0\\u202f])\\d{3}(\\1\\d{3})*([.,]\\d{1,2})?");

    private TypedNumber() {}

    /**
     * Reads it.
     *
     * @param typed what was typed
     * @return the number, empty if it cannot be read
     */
    public static OptionalDouble of(String typed) {
        String text = typed.strip().replace('\u2212', '-');
        if (text.matches("-?\\d+[.]\\d{3}")) {
            return OptionalDouble.of(Double.parseDouble(text));
        }
        if (PARTED.matcher(text).matches()) {
            int last = Math.max(text.lastIndexOf('.'), text.lastIndexOf(','));
            boolean decimals = last >= 0 && text.length() - last - 1 < 3;
            String whole = (decimals ? text.substring(0, last) : text).replaceAll("[^0-9-]", "");
            return OptionalDouble.of(Double.parseDouble(whole + (decimals ? "." + text.substring(last + 1) : "")));
        }
        return PLAIN.matcher(text).matches()
                ? OptionalDouble.of(Double.parseDouble(text.replace(',', '.')))
                : OptionalDouble.empty();
    }
}

package sternwright.job.reading;

import java.math.BigDecimal;
import sternwright.service.ReadingAsked;

/** Limits in plain words; numbers as written, without grouping, for lists, logs and the command line. */
public final class Limits {
    private Limits() {}

    /**
     * Whether a reading is answered with yes or no.
     *
     * @param asked the reading
     * @return true if its unit is {@code 1}
     */
    public static boolean yesOrNo(ReadingAsked asked) {
        return asked.unit().equals("1");
    }

    /**
     * The limit of a reading as a phrase.
     *
     * @param asked the reading
     * @return such as "at least 50 %", "yes", or "no limit given"
     */
    public static String words(ReadingAsked asked) {
        Double low = asked.low();
        Double high = asked.high();
        if (yesOrNo(asked)) {
            return low != null && low >= 1 ? "yes" : high != null && high < 1 ? "no" : "no limit given";
        }
        if (low != null && high != null) {
            return low.equals(high) ? quantity(low, asked) : number(low) + " to " + quantity(high, asked);
        }
        if (low != null) {
            return "at least " + quantity(low, asked);
        }
        return high != null ? "at most " + quantity(high, asked) : "no limit given";
    }

    /**
     * A value with the reading's unit.
     *
     * @param value the value
     * @param asked the reading
     * @return such as "62 %"; "yes" or "no" where that is asked
     */
    public static String quantity(double value, ReadingAsked asked) {
        return yesOrNo(asked) ? (value >= 1 ? "yes" : "no") : number(value) + " " + asked.unit();
    }

    private static String number(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }
}

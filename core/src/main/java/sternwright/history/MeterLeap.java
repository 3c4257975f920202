package sternwright.history;

import java.time.temporal.ChronoUnit;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Whether the last reading of a meter leaps away from those before it. All limits: common practice, no source. */
final class MeterLeap {
    /** No boat whose owner steers her runs so much on average; those that do have always done so. */
    private static final double HOURS_A_DAY = 6;

    /** So many times what was usual before is a leap. */
    private static final double TIMES = 10;

    /** Where nothing tells what is usual: more than half of day and night. */
    private static final double HOURS_A_DAY_OF_A_STRANGER = 12;

    /** A trip of some weeks may run day and night. */
    private static final long DAYS = 30;

    /** Of less than a season nobody knows what is usual. */
    private static final long USUAL_DAYS = 90;

    private MeterLeap() {}

    /**
     * Looks at a last reading.
     *
     * @param first the first reading that counts
     * @param before the one before the last, may be the first
     * @param last the last
     * @return what is odd about it, null if nothing is
     */
    static @Nullable MeterRemark of(MeterReading first, MeterReading before, MeterReading last) {
        long days = ChronoUnit.DAYS.between(before.date(), last.date());
        if (days < DAYS) {
            return null;
        }
        double aDay = (last.hours() - before.hours()) / days;
        long usualDays = ChronoUnit.DAYS.between(first.date(), before.date());
        if (usualDays < USUAL_DAYS) {
            return aDay <= HOURS_A_DAY_OF_A_STRANGER ? null : remark(before, last, aDay, "");
        }
        double usual = (before.hours() - first.hours()) / usualDays;
        return aDay <= HOURS_A_DAY || aDay <= TIMES * usual
                ? null
                : remark(before, last, aDay, String.format(Locale.ROOT, ", after %.1f h a day before", usual));
    }

    private static MeterRemark remark(MeterReading before, MeterReading last, double aDay, String usual) {
        String why = String.format(Locale.ROOT, "means %.0f h a day since %s", aDay, before.date())
                + usual
                + oneDigitLess(before, last);
        return new MeterRemark(
                last.date(),
                last.hours(),
                "which " + why,
                "The reading of " + MeterChain.hours(last.hours()) + " " + why
                        + ". It is passed over until a second reading bears it out: read the meter again and enter what it shows.");
    }

    private static String oneDigitLess(MeterReading before, MeterReading last) {
        double perhaps = Math.rint(last.hours() / 10);
        return perhaps >= before.hours() ? "; with one digit less it is " + MeterChain.hours(perhaps) : "";
    }
}

package sternwright.protection.anode;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/**
 * An anode weighed or gauged after some time in the water.
 *
 * @param body the anode's body in the circuit
 * @param from when it was last known
 * @param leftBefore share of its new mass then
 * @param to when it was weighed
 * @param leftAfter share found
 */
public record Weighing(String body, LocalDate from, double leftBefore, LocalDate to, double leftAfter) {
    public Weighing {
        if (!(leftBefore >= 0 && leftBefore <= 1.05 && leftAfter >= 0 && leftAfter <= leftBefore + 0.05)) {
            throw new IllegalArgumentException(
                    "anode " + body + ": " + percent(leftBefore) + " left on " + from + " and "
                            + percent(leftAfter) + " on " + to
                            + " do not go together; an anode only loses mass. Correct the figures, or enter its renewal between them.");
        }
        if (!to.isAfter(from)) {
            throw new IllegalArgumentException(
                    "anode " + body + " was weighed on " + to + ", not after " + from + ": correct the dates");
        }
    }

    private static String percent(double share) {
        return Math.round(share * 100) + " %";
    }

    /** Months between the two. */
    public double months() {
        return ChronoUnit.DAYS.between(from, to) / 30.4375;
    }

    /** Share of the new mass lost. */
    public double lost() {
        return Math.max(0, leftBefore - leftAfter);
    }
}

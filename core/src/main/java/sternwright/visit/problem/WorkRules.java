package sternwright.visit.problem;

import java.util.List;

/**
 * The hard rules of one work.
 *
 * @param maxLateMonths most months the work may be late; 0 for a safety item, which never passes its life. A limit already
 *     past at the start moves to the first month in which the work can be done at all
 * @param maxLateFirstMonths the same for the first doing, where it must be more lenient or may be
 * @param earliestFraction share of its life that must be used before it is done again, 0 to 1
 * @param once done once and not again in the horizon
 * @param dueAtFirstVisit history unknown: done at the first visit that fits it
 * @param mustFallIn spans of months in each of which the work must be done (before each winter's first frost, say)
 */
public record WorkRules(
        int maxLateMonths,
        int maxLateFirstMonths,
        double earliestFraction,
        boolean once,
        boolean dueAtFirstVisit,
        List<MonthSpan> mustFallIn) {
    public WorkRules {
        mustFallIn = List.copyOf(mustFallIn);
        if (maxLateMonths < 0 || maxLateFirstMonths < 0) {
            throw new IllegalArgumentException(
                    "most months late " + maxLateMonths + ", first " + maxLateFirstMonths + ": expected 0 or more");
        }
        if (!(earliestFraction >= 0 && earliestFraction <= 1)) {
            throw new IllegalArgumentException("earliest fraction " + earliestFraction + ": expected 0 to 1");
        }
    }

    /** One limit for the first and all later doings. */
    public WorkRules(
            int maxLateMonths,
            double earliestFraction,
            boolean once,
            boolean dueAtFirstVisit,
            List<MonthSpan> mustFallIn) {
        this(maxLateMonths, maxLateMonths, earliestFraction, once, dueAtFirstVisit, mustFallIn);
    }

    /** Months the work may be late after it was last done in a month, -1 for before the horizon. */
    public int maxLateMonths(int lastDone) {
        return lastDone < 0 ? maxLateFirstMonths : maxLateMonths;
    }

    /** Rules of a plain recurring work. */
    public static WorkRules recurring(int maxLateMonths, double earliestFraction) {
        return new WorkRules(maxLateMonths, earliestFraction, false, false, List.of());
    }
}

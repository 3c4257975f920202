package sternwright.visit.problem;

/**
 * How long a work lasts once done, and how much of that is used when the horizon starts. With both clauses, whichever comes
 * first counts. With neither, the work has no life of its own: it is done only where another rule asks for it.
 *
 * @param months calendar interval in months, 0 for none
 * @param hours interval in running hours, 0 for none
 * @param monthsUsed months since the work was last done, at the start of month 0
 * @param hoursUsed running hours since then
 * @param use predicted running hours per month
 */
public record Life(double months, double hours, double monthsUsed, double hoursUsed, UseProfile use) {
    public Life {
        if (!(months >= 0) || !(hours >= 0)) {
            throw new IllegalArgumentException(
                    "interval of " + months + " months, " + hours + " hours: expected 0 (none) or more");
        }
        if (!(monthsUsed >= 0) || !(hoursUsed >= 0)) {
            throw new IllegalArgumentException(
                    "used " + monthsUsed + " months, " + hoursUsed + " hours: expected 0 or more");
        }
    }

    /** Whether the work has an interval at all. */
    public boolean bounded() {
        return months > 0 || hours > 0;
    }
}

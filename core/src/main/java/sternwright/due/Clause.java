package sternwright.due;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * One clause of a rule and the day it falls due by it.
 *
 * @param kind which kind of clause
 * @param date the day (the median where it is forecast)
 * @param early80 lower end of the 80 % range, null where nothing is forecast
 * @param late80 upper end of the 80 % range, null where nothing is forecast
 * @param amount the figure of the clause: months, hours, n; 0 where there is none
 * @param detail what else the sentence needs: name of the other work, of the finding, of the occasion; may be empty
 */
public record Clause(
        ClauseKind kind,
        LocalDate date,
        @Nullable LocalDate early80,
        @Nullable LocalDate late80,
        double amount,
        String detail) {
    /**
     * A clause with a certain date.
     *
     * @param kind which kind
     * @param date the day
     * @param amount the figure
     * @param detail what else the sentence needs
     * @return the clause
     */
    public static Clause certain(ClauseKind kind, LocalDate date, double amount, String detail) {
        return new Clause(kind, date, null, null, amount, detail);
    }
}

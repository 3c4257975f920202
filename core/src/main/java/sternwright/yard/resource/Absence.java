package sternwright.yard.resource;

import java.time.LocalDate;

/**
 * Days on which somebody is not there.
 *
 * @param from first day
 * @param to last day
 * @param why holiday, course, illness; may be empty
 */
public record Absence(LocalDate from, LocalDate to, String why) {
    /** Refuses an absence that ends before it begins. */
    public Absence {
        if (to.isBefore(from)) {
            throw new IllegalArgumentException("an absence that ends on " + to + " cannot begin on " + from);
        }
    }

    /**
     * Whether a day lies in it.
     *
     * @param day any day
     * @return true from first to last day
     */
    public boolean covers(LocalDate day) {
        return !day.isBefore(from) && !day.isAfter(to);
    }
}

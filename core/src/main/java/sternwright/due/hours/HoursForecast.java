package sternwright.due.hours;

import java.time.LocalDate;

/**
 * When an engine will have run a number of hours more: median and 80 % range.
 *
 * <p>Running hours are a gamma process in the boat's own seasonal time: over a share {@code u} of a year's use the hours grow
 * by a gamma variable of shape {@code nu u} and an unknown rate. The rate has a gamma prior that says what the yard expects
 * of this kind of use; the meter history turns it into the posterior. Source of the model: van Noortwijk, "A survey of the
 * application of gamma processes in maintenance", Reliability Engineering and System Safety 94 (2009) 2-21 (from memory).
 */
public interface HoursForecast {
    /** A median date with its 80 % range; the far end may lie beyond any sensible horizon and is then capped. */
    record Range(LocalDate early80, LocalDate median, LocalDate late80) {}

    /**
     * The date by which the engine has run some hours more.
     *
     * @param from the day from which the hours count
     * @param hours hours to run, above 0
     * @return median and 80 % range
     */
    Range reach(LocalDate from, double hours);
}

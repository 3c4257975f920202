package sternwright.history;

import java.time.LocalDate;

/**
 * Something about a meter reading that a person should know.
 *
 * @param date the day of the reading
 * @param hours what the meter showed
 * @param text what was made of it and what to do
 */
public record MeterRemark(LocalDate date, double hours, String text) {}

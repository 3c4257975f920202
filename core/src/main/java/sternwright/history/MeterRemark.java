package sternwright.history;

import java.time.LocalDate;

/**
 * Something about a meter reading that a person should know.
 *
 * @param date the day of the reading
 * @param hours what the meter showed
 * @param why what is odd about it, to be read after the figure
 * @param text what was made of it and what to do
 */
public record MeterRemark(LocalDate date, double hours, String why, String text) {
    /**
     * Whether this is said of a reading.
     *
     * @param reading a reading of the same meter
     * @return true if day and hours are the same
     */
    public boolean isOf(MeterReading reading) {
        return date.equals(reading.date()) && hours == reading.hours();
    }
}

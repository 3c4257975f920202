package sternwright.yard;

import java.time.LocalDate;
import java.time.MonthDay;

/**
 * The two halves of the yard's year.
 *
 * @param layUpFrom first day of lay-up
 * @param layUpTo last day of lay-up
 * @param recommissionFrom first day of recommission
 * @param recommissionTo last day of recommission
 */
public record SeasonDates(MonthDay layUpFrom, MonthDay layUpTo, MonthDay recommissionFrom, MonthDay recommissionTo) {
    /** A stretch of days, both ends included. */
    public record Window(LocalDate from, LocalDate to) {
        /**
         * Whether a day lies in the window.
         *
         * @param day any day
         * @return true from first to last day
         */
        public boolean contains(LocalDate day) {
            return !day.isBefore(from) && !day.isAfter(to);
        }
    }

    /** September to November and March to May, common practice of the northern hemisphere. */
    public static final SeasonDates NORTHERN =
            new SeasonDates(MonthDay.of(9, 1), MonthDay.of(11, 30), MonthDay.of(3, 1), MonthDay.of(5, 31));

    /** March to May and September to November: the northern year turned round. */
    public static final SeasonDates SOUTHERN =
            new SeasonDates(MonthDay.of(3, 1), MonthDay.of(5, 31), MonthDay.of(9, 1), MonthDay.of(11, 30));

    /**
     * The lay-up that has not ended before a day.
     *
     * @param day any day
     * @return the running or next lay-up
     */
    public Window layUpEndingFrom(LocalDate day) {
        return endingFrom(day, layUpFrom, layUpTo);
    }

    /**
     * The recommission that has not ended before a day.
     *
     * @param day any day
     * @return the running or next recommission
     */
    public Window recommissionEndingFrom(LocalDate day) {
        return endingFrom(day, recommissionFrom, recommissionTo);
    }

    /**
     * Whether both halves share a day, as no yard's year can.
     *
     * @return true if some day is in lay-up and in recommission
     */
    public boolean overlap() {
        LocalDate leapYear = LocalDate.of(2024, 1, 1);
        return leapYear.datesUntil(leapYear.plusYears(1))
                .anyMatch(d -> layUpEndingFrom(d).contains(d)
                        && recommissionEndingFrom(d).contains(d));
    }

    /** Windows may span New Year: then the last day lies in the year after the first. */
    private static Window endingFrom(LocalDate day, MonthDay from, MonthDay to) {
        LocalDate end = to.atYear(day.getYear());
        if (end.isBefore(day)) {
            end = to.atYear(day.getYear() + 1);
        }
        LocalDate start = from.atYear(end.getYear());
        return new Window(start.isAfter(end) ? from.atYear(end.getYear() - 1) : start, end);
    }
}

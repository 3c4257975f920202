package sternwright.season.dated;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import sternwright.season.Axis;
import sternwright.yard.WorkCalendar;

/**
 * The season's working days and their quarters. Days on which the yard does not work are not there at all.
 *
 * @param days working days in order; a whole number of weeks of them
 * @param daysPerWeek working days of a full week
 * @param begins when a working day begins
 * @param hoursADay hours of a working day
 */
public record WorkingTime(List<LocalDate> days, int daysPerWeek, LocalTime begins, double hoursADay) {
    /** Parts of a working day: about two hours each. */
    public static final int QUARTERS_PER_DAY = 4;

    private static final int SHORTEST_WEEKS = 2;

    /** Copies the list. */
    public WorkingTime {
        days = List.copyOf(days);
    }

    /**
     * The working days from one day to another, and as many more as fill the last week.
     *
     * @param calendar the days on which the yard works
     * @param from first day
     * @param to last day
     * @param begins when a working day begins
     * @param hoursADay hours of a working day
     * @return at least two weeks
     */
    public static WorkingTime of(
            WorkCalendar calendar, LocalDate from, LocalDate to, LocalTime begins, double hoursADay) {
        int perWeek = calendar.workingDays().size();
        List<LocalDate> days = new ArrayList<>();
        LocalDate day = from;
        while (!day.isAfter(to) || days.size() % perWeek != 0 || days.size() < SHORTEST_WEEKS * perWeek) {
            if (calendar.works(day)) {
                days.add(day);
            }
            day = day.plusDays(1);
        }
        return new WorkingTime(days, perWeek, begins, hoursADay);
    }

    /** The axis of the lean season. */
    public Axis axis() {
        return new Axis(days.size() / daysPerWeek, daysPerWeek, QUARTERS_PER_DAY);
    }

    /** First day of the season. */
    public LocalDate first() {
        return days.get(0);
    }

    /** Last day of the season. */
    public LocalDate last() {
        return days.get(days.size() - 1);
    }

    /**
     * The working day on or after a date, counted from 0.
     *
     * @param date any date
     * @return its position; the number of days if the date lies after the last
     */
    public int dayFrom(LocalDate date) {
        int at = Collections.binarySearch(days, date);
        return at >= 0 ? at : -at - 1;
    }

    /** Quarter in which the working day on or after a date begins. */
    public int quarterFrom(LocalDate date) {
        return dayFrom(date) * QUARTERS_PER_DAY;
    }

    /** Quarter by whose beginning something has ended that is done on or before a date. */
    public int quarterAfter(LocalDate date) {
        return dayFrom(date.plusDays(1)) * QUARTERS_PER_DAY;
    }

    /** The day in which a quarter lies; quarters outside the season count as its first or last day. */
    public LocalDate date(int quarter) {
        return days.get(Math.max(0, Math.min(days.size() - 1, quarter / QUARTERS_PER_DAY)));
    }

    /** Day and hour at which a quarter begins. */
    public LocalDateTime begin(int quarter) {
        long minutes = Math.round(hoursADay * 60 * (quarter % QUARTERS_PER_DAY) / QUARTERS_PER_DAY);
        return date(quarter).atTime(begins.plusMinutes(minutes));
    }

    /** Day and hour at which something ends whose last quarter is the one before {@code quarter}. */
    public LocalDateTime end(int quarter) {
        return begin(quarter - 1).plusMinutes(Math.round(hoursADay * 60 / QUARTERS_PER_DAY));
    }

    /**
     * Quarters that a work takes; an eighth of a quarter over is worked in.
     *
     * @param minutes working minutes
     * @return at least 1
     */
    public int quarters(double minutes) {
        double quarter = hoursADay * 60 / QUARTERS_PER_DAY;
        return (int) Math.max(1, Math.ceil(minutes / quarter - 0.125));
    }

    /** First day of week {@code week} of the axis. */
    public LocalDate weekFrom(int week) {
        return days.get(week * daysPerWeek);
    }

    /** Last day of week {@code week} of the axis. */
    public LocalDate weekTo(int week) {
        return days.get((week + 1) * daysPerWeek - 1);
    }
}

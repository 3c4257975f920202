package sternwright.yard;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Set;

/**
 * The days on which the yard works.
 *
 * @param workingDays days of the week
 * @param holidays days off
 */
public record WorkCalendar(Set<DayOfWeek> workingDays, Set<LocalDate> holidays) {
    /** Copies the sets. */
    public WorkCalendar {
        workingDays = Set.copyOf(workingDays);
        holidays = Set.copyOf(holidays);
    }

    /**
     * Whether the yard works on a day.
     *
     * @param day any day
     * @return true on working days that are no holiday
     */
    public boolean works(LocalDate day) {
        return workingDays.contains(day.getDayOfWeek()) && !holidays.contains(day);
    }
}

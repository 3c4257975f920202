package sternwright.season.dated;

import java.time.LocalDate;

/**
 * One operation of the plan that the yard works by.
 *
 * @param name the operation
 * @param date the day it begins
 * @param quarter part of the working day from 0 to 3 in which it begins
 * @param until the day it ends
 * @param people who does it, names with commas; empty for the hoist's own work
 * @param hoist name of the hoist, empty if none is needed
 * @param reason why on this date
 * @param plannedOn the day on which the visits of this plan were planned
 */
public record Published(
        OperationName name,
        LocalDate date,
        int quarter,
        LocalDate until,
        String people,
        String hoist,
        String reason,
        LocalDate plannedOn) {
    /** The date as one that is to be kept. */
    public PromisedDate kept() {
        return new PromisedDate(name, date, quarter, date, false);
    }
}

package sternwright.season.dated;

import java.time.LocalDate;
import sternwright.boat.PartRef;
import sternwright.due.ClauseKind;
import sternwright.service.Place;

/**
 * One work of one planned visit of the season that the yard works by.
 *
 * @param boatId the boat
 * @param from first day on which the visit can be
 * @param to last day on which it should be
 * @param place {@link Place#AFLOAT} or {@link Place#ASHORE}
 * @param lifts whether the boat is lifted for the visit
 * @param visitMinutes minutes of the whole visit, set-ups counted in, at least 0
 * @param part the part
 * @param partName as people say it, with the side where there are two
 * @param ruleId the rule
 * @param dueOn the day it falls due
 * @param clause the clause that came first
 * @param minutes working minutes, access counted in, set-up not; at least 0
 * @param price labour and supplies without tax, in the yard's currency
 * @param restsOn a print of all that the visits of the boat were planned from, and of these lines themselves
 */
public record PublishedWork(
        String boatId,
        LocalDate from,
        LocalDate to,
        Place place,
        boolean lifts,
        double visitMinutes,
        PartRef part,
        String partName,
        String ruleId,
        LocalDate dueOn,
        ClauseKind clause,
        double minutes,
        double price,
        String restsOn) {
    /**
     * The same work with the print of what it rests on.
     *
     * @param print the print
     * @return a new record
     */
    public PublishedWork restsOn(String print) {
        return new PublishedWork(
                boatId,
                from,
                to,
                place,
                lifts,
                visitMinutes,
                part,
                partName,
                ruleId,
                dueOn,
                clause,
                minutes,
                price,
                print);
    }
}

package sternwright.visit;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import sternwright.boat.Berth;
import sternwright.boat.Boat;
import sternwright.boat.PartCatalogue;
import sternwright.due.Due;
import sternwright.due.DueList;
import sternwright.due.Reasons;
import sternwright.history.BoatHistory;
import sternwright.yard.Use;
import sternwright.yard.Yard;

/**
 * All that the visits of one boat are made from.
 *
 * @param boat the boat
 * @param berth its berth
 * @param use its kind of use
 * @param yard the yard: tariff, labour, season, stores
 * @param catalogue kinds of part
 * @param rules rules in force for each part
 * @param history what is written down
 * @param dues its due list on the day called today
 * @param reasons wording of reasons in the reader's language
 * @param today the day from which visits can be held
 * @param horizonMonths how far to plan, months; 24 by custom, at least 1
 * @param ashoreSince the day since which the boat is known to stand ashore, null if nothing is known of it
 */
public record BoatQuestion(
        Boat boat,
        Berth berth,
        Use use,
        Yard yard,
        PartCatalogue catalogue,
        DueList.RulesOf rules,
        BoatHistory history,
        List<Due> dues,
        Reasons reasons,
        LocalDate today,
        int horizonMonths,
        @Nullable LocalDate ashoreSince) {
    /** Copies the list. */
    public BoatQuestion {
        dues = List.copyOf(dues);
        if (horizonMonths < 1) {
            throw new IllegalArgumentException("horizon of " + horizonMonths + " months: expected 1 or more");
        }
    }

    /**
     * The same question with the day since which the boat is known to stand ashore.
     *
     * @param since the day, null if nothing is known
     * @return a new question
     */
    public BoatQuestion ashoreSince(@Nullable LocalDate since) {
        return new BoatQuestion(
                boat, berth, use, yard, catalogue, rules, history, dues, reasons, today, horizonMonths, since);
    }

    /** A question of a boat of which nobody says whether she stands ashore. */
    public BoatQuestion(
            Boat boat,
            Berth berth,
            Use use,
            Yard yard,
            PartCatalogue catalogue,
            DueList.RulesOf rules,
            BoatHistory history,
            List<Due> dues,
            Reasons reasons,
            LocalDate today,
            int horizonMonths) {
        this(boat, berth, use, yard, catalogue, rules, history, dues, reasons, today, horizonMonths, null);
    }
}

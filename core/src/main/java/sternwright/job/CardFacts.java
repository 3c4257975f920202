package sternwright.job;

import java.time.LocalDate;
import java.util.List;
import sternwright.boat.Berth;
import sternwright.boat.Boat;
import sternwright.boat.PartCatalogue;
import sternwright.finding.Caution;
import sternwright.history.BoatHistory;
import sternwright.yard.Yard;

/**
 * What job card and estimate need to know beside the visit itself.
 *
 * @param yard the yard
 * @param boat the boat of the visit
 * @param berth where it lies
 * @param catalogue kinds of part
 * @param cautions cautions the rules refer to by id
 * @param history what was done and measured before
 * @param issuedOn the day the paper is written
 */
public record CardFacts(
        Yard yard,
        Boat boat,
        Berth berth,
        PartCatalogue catalogue,
        List<Caution> cautions,
        BoatHistory history,
        LocalDate issuedOn) {
    /** Copies the list. */
    public CardFacts {
        cautions = List.copyOf(cautions);
    }
}

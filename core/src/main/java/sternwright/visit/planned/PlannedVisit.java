package sternwright.visit.planned;

import java.time.LocalDate;
import java.util.List;
import sternwright.measure.Money;
import sternwright.service.Place;

/**
 * One visit to one boat.
 *
 * @param boatId the boat
 * @param from first day on which it can be
 * @param to last day on which it should be
 * @param place {@link Place#AFLOAT} or {@link Place#ASHORE}
 * @param lifts the boat is lifted for this visit; false if it is afloat or stands ashore already
 * @param works the works in working order
 * @param minutes all minutes, set-ups counted in
 * @param supplies all supplies, same items added up
 * @param prices lines that belong to the visit as a whole
 * @param net price without tax
 * @param savedByBundling what the same works would cost more if each had a visit of its own, without tax
 */
public record PlannedVisit(
        String boatId,
        LocalDate from,
        LocalDate to,
        Place place,
        boolean lifts,
        List<PlannedWork> works,
        double minutes,
        List<SupplyLine> supplies,
        List<PriceLine> prices,
        Money net,
        Money savedByBundling) {
    /** Copies the lists. */
    public PlannedVisit {
        works = List.copyOf(works);
        supplies = List.copyOf(supplies);
        prices = List.copyOf(prices);
    }
}

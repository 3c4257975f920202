package sternwright.visit.planned;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
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
    /** What one engineer works in a day, minutes. Common practice, no source. */
    public static final double MINUTES_OF_A_DAY = 8 * 60;

    private static final int WEEK = 7;

    /** Copies the lists. */
    public PlannedVisit {
        works = List.copyOf(works);
        supplies = List.copyOf(supplies);
        prices = List.copyOf(prices);
    }

    /**
     * Whether the visit cannot wait.
     *
     * @return true if the window leaves less than a week beyond the days of work
     */
    public boolean atOnce() {
        long window = ChronoUnit.DAYS.between(from, to) + 1;
        return window - Math.ceil(minutes / MINUTES_OF_A_DAY) < WEEK;
    }
}

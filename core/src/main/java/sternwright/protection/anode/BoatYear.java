package sternwright.protection.anode;

import java.util.Collections;
import java.util.List;

/**
 * What a boat does in each month of the year, January first.
 *
 * @param runningHours hours under way in each month
 * @param afloatShare share of each month in the water, 0 to 1
 */
public record BoatYear(List<Double> runningHours, List<Double> afloatShare) {
    /** Hours in a twelfth of a year. */
    public static final double HOURS_A_MONTH = AnodeDesign.HOURS_A_YEAR / 12;

    public BoatYear {
        runningHours = List.copyOf(runningHours);
        afloatShare = List.copyOf(afloatShare);
        if (runningHours.size() != 12 || afloatShare.size() != 12) {
            throw new IllegalArgumentException("a year has 12 months: give 12 running hours and 12 shares afloat");
        }
    }

    /** Afloat all year at the berth. */
    public static BoatYear atBerth() {
        return new BoatYear(Collections.nCopies(12, 0.0), Collections.nCopies(12, 1.0));
    }

    /** Hours at the berth in a month (0 for January). */
    public double berthHours(int month) {
        return Math.max(0, HOURS_A_MONTH * afloatShare.get(month) - runningHours.get(month));
    }
}

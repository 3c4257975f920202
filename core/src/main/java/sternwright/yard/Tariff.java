package sternwright.yard;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What being ashore and being called out costs.
 *
 * @param lifts price of lift, wash and launch by length, shortest band first
 * @param hardStandingPerMetreWeek hard standing, per metre of boat and started week
 * @param callOutAfloat one call-out to a boat in the water
 * @param workVisitAshore going to a boat that stands ashore already
 * @param lossOfUsePerWeek what a week ashore in the boating months is worth to an owner; for planning only, never billed
 * @param diverHour a diver's hour where work under water is done afloat
 */
public record Tariff(
        List<LengthBand> lifts,
        double hardStandingPerMetreWeek,
        double callOutAfloat,
        double workVisitAshore,
        double lossOfUsePerWeek,
        double diverHour) {
    /** Sorts the bands by length. */
    public Tariff {
        lifts = lifts.stream()
                .sorted(Comparator.comparingDouble(LengthBand::upToLengthM))
                .toList();
    }

    /**
     * The price of lift, wash and launch.
     *
     * @param lengthM length of the boat, m
     * @return the price, empty if the boat is longer than the longest band
     */
    public OptionalDouble lift(double lengthM) {
        return lifts.stream()
                .filter(b -> lengthM <= b.upToLengthM())
                .mapToDouble(LengthBand::price)
                .findFirst();
    }

    /**
     * The price of a week on hard standing.
     *
     * @param lengthM length of the boat, m
     * @return price in the yard's currency
     */
    public double standingWeek(double lengthM) {
        return hardStandingPerMetreWeek * lengthM;
    }
}

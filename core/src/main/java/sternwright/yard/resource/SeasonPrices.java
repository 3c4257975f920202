package sternwright.yard.resource;

import org.jspecify.annotations.Nullable;

/**
 * What the season's wishes are worth to the yard. The unit is the yard's currency; only the proportions move the plan.
 *
 * @param frostLatePerDay a boat not safe against frost by its berth's first frost, for each working day
 * @param latePerDay work or launch after the date it should be done by, for each working day
 * @param earlyPerDay a boat launched before the owner wants it, for each working day
 * @param promiseMoved a promised date that moves to another day
 * @param promisePerDay the same for each working day it moves
 * @param unevenPerHand each hand at work at once above the usual crew, for each week
 * @param overtimePerHandWeek one extra person for a week; null to take it from the crew's overtime prices
 * @param evenShare share of the crew that the yard counts as an even week, 0 to 1
 */
public record SeasonPrices(
        double frostLatePerDay,
        double latePerDay,
        double earlyPerDay,
        double promiseMoved,
        double promisePerDay,
        double unevenPerHand,
        @Nullable Double overtimePerHandWeek,
        double evenShare) {
    /** A yard that has said nothing: safety first, then promises, then lateness. Common practice, no source. */
    public static final SeasonPrices USUAL = new SeasonPrices(4000, 400, 40, 800, 160, 200, null, 0.75);

    /** The proportions of the generated seasons used in measurements. */
    public static final SeasonPrices GENERATED = new SeasonPrices(32, 40, 4, 40, 8, 10, 60.0, 0.75);
}

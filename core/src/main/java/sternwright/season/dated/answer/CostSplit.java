package sternwright.season.dated.answer;

import sternwright.season.Cost;

/**
 * What a plan costs, in the yard's currency, split by what it is paid for.
 *
 * @param frost boats not safe against frost in time
 * @param promises dates moved that were given to owners
 * @param late work and launches after their dates
 * @param early boats launched before the owner wants them
 * @param overtime extra people
 * @param uneven weeks above the usual crew
 * @param total all of it
 */
public record CostSplit(
        double frost, double promises, double late, double early, double overtime, double uneven, double total) {
    static CostSplit of(Cost points, double pointValue) {
        return new CostSplit(
                points.frost() * pointValue,
                points.promises() * pointValue,
                points.late() * pointValue,
                points.early() * pointValue,
                points.overtime() * pointValue,
                points.uneven() * pointValue,
                points.total() * pointValue);
    }
}

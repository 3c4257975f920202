package sternwright.season;

/**
 * What the yard pays, in its own points or money, for what no plan can avoid altogether. All at least 0.
 *
 * @param overtimePerHandWeek one extra hand for one week
 * @param unevenPerHand one hand of a week's peak above the yard's usual crew
 * @param promiseMoved a promised operation that lands on another day
 * @param promisePerQ each quarter between the promised and the planned start
 */
public record Weights(int overtimePerHandWeek, int unevenPerHand, int promiseMoved, int promisePerQ) {
    /** The weights of the generated seasons (measurements, demonstrations); a yard has its own. */
    public static final Weights GENERATED = new Weights(60, 10, 40, 2);
}

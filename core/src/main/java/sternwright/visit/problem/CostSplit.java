package sternwright.visit.problem;

/**
 * The plan's cost by cause, in the smallest unit of the currency.
 *
 * @param visits call-outs afloat and work visits ashore
 * @param lifts lifts and launches not paid already
 * @param standing hard standing not paid already
 * @param lossOfUse the owner's lost use
 * @param setUps opening of service points
 * @param work labour and supplies
 * @param unusedLife life thrown away by doing early
 * @param risk risk of doing late
 * @param end life used up at the end of the horizon
 */
public record CostSplit(
        long visits,
        long lifts,
        long standing,
        long lossOfUse,
        long setUps,
        long work,
        long unusedLife,
        long risk,
        long end) {
    /** The sum of all. */
    public long total() {
        return visits + lifts + standing + lossOfUse + setUps + work + unusedLife + risk + end;
    }
}

package sternwright.season;

/**
 * A figure that no plan of the season can cost less than.
 *
 * @param value the figure, in the plan's points
 * @param how how it was found, in one phrase
 */
public record Bound(long value, String how) {
    /** The bound that is always true. */
    public static final Bound ZERO = new Bound(0, "no cost is negative");

    /** The part of {@code cost} that is not proved necessary: (cost - bound) / cost, 0 for a cost of 0. */
    public double gap(long cost) {
        return cost <= 0 ? 0 : (double) (cost - value) / cost;
    }
}

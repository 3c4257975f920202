package sternwright.season.bound;

import sternwright.season.arrays.SeasonArrays;

/**
 * Ascent with a step of its own for every price (D. P. Kingma and J. Ba, 'Adam: a method for stochastic optimization', ICLR 2015),
 * since launch slots are worth tens of points in a few quarters and hands a fraction of a point in many. Steps shrink as the budget
 * is spent. Prices of a week's peak stay within what a hand of it costs.
 */
final class Ascent {
    private static final double MEAN_MEMORY = 0.9;
    private static final double SQUARE_MEMORY = 0.99;

    /** Strides of people, peaks, hoists, places and pools: a launch slot is worth far more than a hand in one quarter. */
    private static final double[] FAMILY = {1, 1, 20, 1, 5};

    private static final double POINTS_PER_STRIDE = 600;
    private static final double WIDEST = 200;

    private final SeasonArrays a;
    private final double wide;
    private double people = 1;
    private final Prices prices;
    private final double[][] price;
    private final double[][] mean;
    private final double[][] square;

    /**
     * An ascent from the prices there are.
     *
     * @param gap what is still to be proved at the beginning, in points: where people are short the gap is wide and so are the strides
     */
    Ascent(SeasonArrays a, Prices prices, double gap) {
        this.a = a;
        wide = Math.max(1, Math.min(WIDEST, gap / POINTS_PER_STRIDE));
        this.prices = prices;
        price = new double[][] {prices.people, prices.busy, prices.hoists, prices.places, prices.pools};
        mean = zeros();
        square = zeros();
    }

    private double[][] zeros() {
        double[][] rows = new double[price.length][];
        for (int f = 0; f < rows.length; f++) {
            rows[f] = new double[price[f].length];
        }
        return rows;
    }

    /** From now on people's prices take strides as wide as the gap. */
    void widen() {
        people = wide;
    }

    /** Sets the next prices to try, each at most about {@code stride} away. */
    void step(Usage usage, double stride) {
        double[][] over = {usage.people, usage.busy, usage.hoists, usage.places, usage.pools};
        for (int f = 0; f < price.length; f++) {
            double[] p = price[f];
            double[] m = mean[f];
            double[] v = square[f];
            double[] g = over[f];
            for (int x = 0; x < p.length; x++) {
                m[x] = MEAN_MEMORY * m[x] + (1 - MEAN_MEMORY) * g[x];
                v[x] = SQUARE_MEMORY * v[x] + (1 - SQUARE_MEMORY) * g[x] * g[x];
                p[x] = Math.max(0, p[x] + (f == 0 ? people : 1) * FAMILY[f] * stride * m[x] / (Math.sqrt(v[x]) + 0.1));
            }
        }
        for (int w = 0; w < a.extraHands.length; w++) {
            cap(prices.busy, w, 1, a.problem.weights().unevenPerHand());
        }
    }

    /** Brings a week's prices to the nearest ones that are not negative and add up to no more than {@code most}. */
    private void cap(double[] row, int week, int count, double most) {
        int from = week * a.quartersPerWeek * count;
        int to = from + a.quartersPerWeek * count;
        double sum = 0;
        for (int x = from; x < to; x++) {
            sum += row[x];
        }
        while (sum > most + 1e-9) {
            int positive = 0;
            for (int x = from; x < to; x++) {
                positive += row[x] > 0 ? 1 : 0;
            }
            double less = (sum - most) / positive;
            sum = 0;
            for (int x = from; x < to; x++) {
                row[x] = Math.max(0, row[x] - less);
                sum += row[x];
            }
        }
    }
}

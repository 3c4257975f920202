package sternwright.season.bound;

import sternwright.season.arrays.Limits;
import sternwright.season.arrays.SeasonArrays;

/** A price for every limit in every quarter, and what each kind of work pays for it. */
final class Prices {
    /** Every price is a multiple of this power of two: sums of up to 2^37 points stay exact in a double. */
    static final double GRAIN = 0x1p-16;

    final SeasonArrays a;
    final double[] people;
    final double[] busy;
    final double[] hoists;
    final double[] places;
    final double[] pools;

    /** For each skill, the price of one hand from quarter 0 to each quarter. */
    final double[][] bySkill;

    /** The same for each lift class. */
    final double[][] byLift;

    /** The same for each place class. */
    final double[][] byPlace;

    /** The same for each pool. */
    final double[][] byPool;

    Prices(SeasonArrays a) {
        this.a = a;
        people = new double[a.people.capacity.length];
        busy = new double[a.quarters];
        hoists = new double[a.hoists.capacity.length];
        places = new double[a.places.capacity.length];
        pools = new double[a.pools.capacity.length];
        bySkill = new double[a.people.kinds][a.quarters + 1];
        byLift = new double[a.hoists.kinds][a.quarters + 1];
        byPlace = new double[a.places.kinds][a.quarters + 1];
        byPool = new double[a.pools.kinds][a.quarters + 1];
    }

    /** Rounds the prices down to the grain and adds them up along the axis; to be called after they have been changed. */
    void addUp() {
        for (double[] row : new double[][] {people, busy, hoists, places, pools}) {
            for (int x = 0; x < row.length; x++) {
                row[x] = Math.floor(row[x] / GRAIN) * GRAIN;
            }
        }
        addUp(a.people, people, bySkill, busy);
        double[] none = new double[a.quarters];
        addUp(a.hoists, hoists, byLift, none);
        addUp(a.places, places, byPlace, none);
        addUp(a.pools, pools, byPool, none);
    }

    private void addUp(Limits limits, double[] price, double[][] sums, double[] common) {
        for (int k = 0; k < limits.kinds; k++) {
            double sum = 0;
            for (int q = 0; q < a.quarters; q++) {
                sum += common[q];
                for (int l : limits.ofKind[k]) {
                    sum += price[q * limits.count + l];
                }
                sums[k][q + 1] = sum;
            }
        }
    }

    /** What all the limits are worth at these prices, to be taken off the visits' sum. */
    double worth(int evenHands) {
        double worth = 0;
        for (double b : busy) {
            worth += b * evenHands;
        }
        for (int w = 0; w < a.extraHands.length; w++) {
            worth += a.extraHands[w]
                    * Math.max(0, ofWeek(w) - a.problem.weights().overtimePerHandWeek());
        }
        return worth
                + worth(people, a.people.capacity)
                + worth(hoists, a.hoists.capacity)
                + worth(places, a.places.capacity)
                + worth(pools, a.pools.capacity);
    }

    /** What one extra hand in all of week {@code w} is worth: where that is more than it costs, all there may be are taken. */
    double ofWeek(int w) {
        int from = w * a.quartersPerWeek * a.people.count;
        double sum = 0;
        for (int x = from; x < from + a.quartersPerWeek * a.people.count; x++) {
            sum += people[x];
        }
        return sum;
    }

    private static double worth(double[] price, int[] capacity) {
        double worth = 0;
        for (int x = 0; x < price.length; x++) {
            worth += price[x] * capacity[x];
        }
        return worth;
    }
}

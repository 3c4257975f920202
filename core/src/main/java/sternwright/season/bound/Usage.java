package sternwright.season.bound;

import sternwright.season.arrays.Limits;
import sternwright.season.arrays.SeasonArrays;

/** What the separately planned visits use of every limit in every quarter, less what there is: the direction prices should go. */
final class Usage {
    final double[] people;
    final double[] busy;
    final double[] hoists;
    final double[] places;
    final double[] pools;
    private final SeasonArrays a;
    private final int[][] skill;
    private final int[][] lift;
    private final int[][] place;
    private final int[][] pool;

    Usage(SeasonArrays a) {
        this.a = a;
        people = new double[a.people.capacity.length];
        busy = new double[a.quarters];
        hoists = new double[a.hoists.capacity.length];
        places = new double[a.places.capacity.length];
        pools = new double[a.pools.capacity.length];
        skill = new int[a.people.kinds][a.quarters + 1];
        lift = new int[a.hoists.kinds][a.quarters + 1];
        place = new int[a.places.kinds][a.quarters + 1];
        pool = new int[a.pools.kinds][a.quarters + 1];
    }

    void clear() {
        for (int[][] kinds : new int[][][] {skill, lift, place, pool}) {
            for (int[] row : kinds) {
                java.util.Arrays.fill(row, 0);
            }
        }
    }

    /** Counts operation {@code i} from {@code q}. */
    void count(int i, int q) {
        int end = q + a.length[i];
        if (a.skill[i] >= 0) {
            skill[a.skill[i]][q] += a.hands[i];
            skill[a.skill[i]][end] -= a.hands[i];
        }
        if (a.liftClass[i] >= 0) {
            lift[a.liftClass[i]][q]++;
            lift[a.liftClass[i]][end]--;
        }
        int s = a.stay[i];
        if (s >= 0) {
            boolean isLift = i == a.stayLift[s];
            place[a.stayClass[s]][isLift ? q : end] += isLift ? 1 : -1;
        }
        int[] needs = a.needs[i];
        for (int x = 0; x < needs.length; x += 2) {
            pool[needs[x]][q] += needs[x + 1];
            pool[needs[x]][end] -= needs[x + 1];
        }
    }

    void add(Usage other) {
        add(skill, other.skill);
        add(lift, other.lift);
        add(place, other.place);
        add(pool, other.pool);
    }

    private static void add(int[][] to, int[][] from) {
        for (int k = 0; k < to.length; k++) {
            for (int q = 0; q < to[k].length; q++) {
                to[k][q] += from[k][q];
            }
        }
    }

    /** Turns the counts into use less capacity, extra hands included where their price pays for them. */
    void compare(Prices prices, int evenHands) {
        java.util.Arrays.fill(busy, -evenHands);
        over(a.people, skill, people, busy);
        for (int w = 0; w < a.extraHands.length; w++) {
            if (prices.ofWeek(w) > a.problem.weights().overtimePerHandWeek()) {
                int from = w * a.quartersPerWeek * a.people.count;
                for (int x = from; x < from + a.quartersPerWeek * a.people.count; x++) {
                    people[x] -= a.extraHands[w];
                }
            }
        }
        double[] none = new double[a.quarters];
        over(a.hoists, lift, hoists, none);
        over(a.places, place, places, none);
        over(a.pools, pool, pools, none);
    }

    private void over(Limits limits, int[][] changes, double[] out, double[] all) {
        for (int x = 0; x < out.length; x++) {
            out[x] = -limits.capacity[x];
        }
        for (int k = 0; k < limits.kinds; k++) {
            int use = 0;
            for (int q = 0; q < a.quarters; q++) {
                use += changes[k][q];
                all[q] += use;
                for (int l : limits.ofKind[k]) {
                    out[q * limits.count + l] += use;
                }
            }
        }
    }
}

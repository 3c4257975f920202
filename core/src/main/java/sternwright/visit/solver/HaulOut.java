package sternwright.visit.solver;

import java.util.Arrays;
import java.util.List;
import sternwright.visit.problem.BoatMonth;
import sternwright.visit.problem.VisitProblem;

/**
 * When the boat stands ashore and which visits are held, at least fixed cost less the gain offered for each visit: a dynamic
 * programme over the months. A stay ashore that touches a stay already paid needs no lift of its own: the boat is hauled
 * earlier or launched later. Slots are numbered afloat 0 to T-1, ashore T to 2T-1.
 */
final class HaulOut {
    static final byte FREE = 0;
    static final byte OPEN = 1;
    static final byte CLOSED = 2;

    /** Afloat; ashore; ashore and staying so until the paid stay that follows. */
    private static final int STATES = 3;

    private static final int WATER = 0;
    private static final int OUT = 1;
    private static final int JOINED = 2;
    private static final double NONE = Double.POSITIVE_INFINITY;

    private final int horizon;
    private final int counts;
    private final int minVisits;
    private final int maxVisits;
    private final boolean counted;
    private final int initial;
    private final double[] transition;
    private final double[] visitCost;
    private final boolean[] possible;
    private final double[] body = new double[4];
    private final double[][] before;
    private final int[][] choice;
    /** First month of the run of months not paid that holds the month; -1 in a paid month. */
    final int[] gapFirst;

    /** Last month of that run. */
    final int[] gapLast;

    /** Chosen state of each month after {@link #solve}. */
    final int[] state;

    /** Lifts and visits within the numbers given; 0 and at least 2T for no limit. */
    HaulOut(VisitProblem problem, int fewest, int most) {
        horizon = problem.horizon();
        minVisits = fewest;
        maxVisits = Math.min(most, 2 * horizon);
        counted = minVisits > 0 || most < 2 * horizon;
        counts = !counted ? 1 : most < 2 * horizon ? maxVisits + 1 : minVisits + 1;
        initial = problem.ashoreAtStart() ? OUT : WATER;
        transition = new double[horizon * STATES * STATES];
        visitCost = new double[2 * horizon];
        possible = new boolean[2 * horizon];
        before = new double[horizon + 1][STATES * counts];
        choice = new int[horizon + 1][STATES * counts];
        state = new int[horizon];
        gapFirst = new int[horizon];
        gapLast = new int[horizon];
        fillGaps(problem.months());
        for (int t = 0; t < horizon; t++) {
            BoatMonth month = problem.months().get(t);
            visitCost[t] = problem.tariff().callOutAfloatCents();
            visitCost[horizon + t] = problem.tariff().workVisitAshoreCents();
            possible[t] = month.afloatPossible();
            possible[horizon + t] = month.ashorePossible();
            fillTransitions(problem, t);
        }
    }

    /** What is offered for visits, for being ashore in a month, and for coming ashore in a month. */
    static final class Gains {
        /** For a visit, by slot. */
        final double[] visit;

        /** For standing ashore, by month. */
        final double[] ashore;

        /** For coming out of the water, by month. */
        final double[] start;

        Gains(int horizon) {
            visit = new double[2 * horizon];
            ashore = new double[horizon];
            start = new double[horizon];
        }

        void clear() {
            Arrays.fill(visit, 0);
            Arrays.fill(ashore, 0);
            Arrays.fill(start, 0);
        }
    }

    private void fillGaps(List<BoatMonth> months) {
        for (int t = 0; t < horizon; t++) {
            boolean paid = months.get(t).ashorePaid();
            gapFirst[t] = paid ? -1 : t > 0 && gapFirst[t - 1] >= 0 ? gapFirst[t - 1] : t;
        }
        for (int t = horizon - 1; t >= 0; t--) {
            boolean paid = months.get(t).ashorePaid();
            gapLast[t] = paid ? -1 : t + 1 < horizon && gapLast[t + 1] >= 0 ? gapLast[t + 1] : t;
        }
    }

    /** Whether the boat comes out of the water in the month after {@link #solve}. */
    boolean starts(int t) {
        return state[t] != WATER && (t == 0 ? initial : state[t - 1]) == WATER;
    }

    private void fillTransitions(VisitProblem problem, int t) {
        BoatMonth month = problem.months().get(t);
        double hold = month.standingCents() + month.lossOfUseCents();
        double lift = problem.tariff().liftLaunchCents();
        Arrays.fill(transition, t * STATES * STATES, (t + 1) * STATES * STATES, NONE);
        if (month.ashorePaid()) {
            for (int p = 0; p < STATES; p++) {
                set(t, p, OUT, 0);
            }
            return;
        }
        set(t, WATER, WATER, 0);
        set(t, OUT, WATER, 0);
        set(t, WATER, OUT, lift + hold);
        set(t, OUT, OUT, hold);
        if (paidFollows(problem.months(), t)) {
            for (int p = 0; p < STATES; p++) {
                set(t, p, JOINED, hold);
            }
        }
    }

    private static boolean paidFollows(List<BoatMonth> months, int t) {
        for (int u = t + 1; u < months.size(); u++) {
            if (months.get(u).ashorePaid()) {
                return true;
            }
        }
        return false;
    }

    private void set(int t, int from, int to, double cost) {
        transition[(t * STATES + from) * STATES + to] = cost;
    }

    private double get(int t, int from, int to) {
        return transition[(t * STATES + from) * STATES + to];
    }

    private double net(int t, int from, int to, Gains gain) {
        double cost = get(t, from, to);
        if (to != WATER) {
            cost -= gain.ashore[t] + (from == WATER ? gain.start[t] : 0);
        }
        return cost;
    }

    /** Whether going from one month's state to the next pays a lift. */
    boolean lifts(int t) {
        int from = t == 0 ? initial : state[t - 1];
        return from == WATER && state[t] == OUT && get(t, WATER, OUT) > get(t, OUT, OUT);
    }

    /** Whether the boat is ashore in the month after {@link #solve}. */
    boolean ashore(int t) {
        return state[t] != WATER;
    }

    /** Least cost less gains; fills {@code open} with the visits held. Infinite if nothing fits the fixed slots. */
    double solve(Gains gain, byte[] fixed, boolean[] open) {
        forward(gain, fixed);
        int best = -1;
        double value = NONE;
        for (int s = 0; s < STATES; s++) {
            for (int c = 0; c < counts; c++) {
                if (finalCount(c) && before[horizon][s * counts + c] < value) {
                    value = before[horizon][s * counts + c];
                    best = s * counts + c;
                }
            }
        }
        if (best < 0) {
            return NONE;
        }
        for (int t = horizon - 1; t >= 0; t--) {
            int packed = choice[t + 1][best];
            state[t] = best / counts;
            open[t] = (packed & 1) != 0;
            open[horizon + t] = (packed & 2) != 0;
            best = packed >> 2;
        }
        return value;
    }

    private boolean finalCount(int c) {
        return !counted || c >= minVisits && c <= maxVisits;
    }

    private int countAfter(int c, int option) {
        if (!counted) {
            return 0;
        }
        int sum = c + (option & 1) + (option >> 1);
        if (sum < counts) {
            return sum;
        }
        return maxVisits >= 2 * horizon ? counts - 1 : -1;
    }

    private void forward(Gains gain, byte[] fixed) {
        Arrays.fill(before[0], NONE);
        before[0][initial * counts] = 0;
        for (int t = 0; t < horizon; t++) {
            double[] now = before[t];
            double[] then = before[t + 1];
            Arrays.fill(then, NONE);
            for (int s = 0; s < STATES; s++) {
                fillBody(t, s, gain, fixed);
                for (int p = 0; p < STATES; p++) {
                    double cost = net(t, p, s, gain);
                    if (cost < NONE) {
                        for (int c = 0; c < counts; c++) {
                            if (now[p * counts + c] < NONE) {
                                relax(now[p * counts + c] + cost, p * counts + c, c, s, then, choice[t + 1]);
                            }
                        }
                    }
                }
            }
        }
    }

    private void relax(double cost, int origin, int c, int s, double[] then, int[] chosen) {
        if (!counted) {
            int best = 0;
            for (int o = 1; o < 4; o++) {
                if (body[o] < body[best]) {
                    best = o;
                }
            }
            if (cost + body[best] < then[s]) {
                then[s] = cost + body[best];
                chosen[s] = origin << 2 | best;
            }
            return;
        }
        for (int o = 0; o < 4; o++) {
            int after = countAfter(c, o);
            if (after >= 0 && cost + body[o] < then[s * counts + after]) {
                then[s * counts + after] = cost + body[o];
                chosen[s * counts + after] = origin << 2 | o;
            }
        }
    }

    /** Cost of the four choices of a month (bit 0 afloat, bit 1 ashore) in a state. */
    private void fillBody(int t, int s, Gains gain, byte[] fixed) {
        double[] afloat = {closed(fixed[t]), possible[t] ? held(t, gain, fixed) : NONE};
        int a = horizon + t;
        double[] ashore = {closed(fixed[a]), s != WATER && possible[a] ? held(a, gain, fixed) : NONE};
        for (int o = 0; o < 4; o++) {
            body[o] = afloat[o & 1] + ashore[o >> 1];
        }
    }

    private static double closed(byte fixed) {
        return fixed == OPEN ? NONE : 0;
    }

    private double held(int slot, Gains gain, byte[] fixed) {
        return fixed[slot] == CLOSED ? NONE : visitCost[slot] - gain.visit[slot];
    }

    /**
     * Least value of {@link #solve} if a slot were held, and if it were not, for every slot.
     *
     * @param held filled with the value when held, by slot
     * @param not filled with the value when not held, by slot
     */
    void marginals(Gains gain, byte[] fixed, double[] held, double[] not) {
        forward(gain, fixed);
        Arrays.fill(held, NONE);
        Arrays.fill(not, NONE);
        double[] after = new double[STATES * counts];
        for (int s = 0; s < STATES; s++) {
            for (int c = 0; c < counts; c++) {
                after[s * counts + c] = finalCount(c) ? 0 : NONE;
            }
        }
        for (int t = horizon - 1; t >= 0; t--) {
            double[] earlier = new double[STATES * counts];
            Arrays.fill(earlier, NONE);
            for (int s = 0; s < STATES; s++) {
                fillBody(t, s, gain, fixed);
                backward(t, s, gain, after, earlier, held, not);
            }
            after = earlier;
        }
    }

    private void backward(int t, int s, Gains gain, double[] after, double[] earlier, double[] held, double[] not) {
        for (int p = 0; p < STATES; p++) {
            double cost = net(t, p, s, gain);
            for (int c = 0; cost < NONE && c < counts; c++) {
                for (int o = 0; o < 4; o++) {
                    int n = countAfter(c, o);
                    if (n < 0) {
                        continue;
                    }
                    double rest = cost + body[o] + after[s * counts + n];
                    earlier[p * counts + c] = Math.min(earlier[p * counts + c], rest);
                    double whole = before[t][p * counts + c] + rest;
                    double[] f = (o & 1) != 0 ? held : not;
                    f[t] = Math.min(f[t], whole);
                    double[] a = o >> 1 != 0 ? held : not;
                    a[horizon + t] = Math.min(a[horizon + t], whole);
                }
            }
        }
    }
}

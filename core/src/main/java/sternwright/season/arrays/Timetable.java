package sternwright.season.arrays;

import java.util.Arrays;

/**
 * Operations on the axis, what they use, and what they cost; operations are added and removed one at a time.
 *
 * <p>Two costs are kept: {@link #points} is the plan's true cost; {@link #guide} is {@link #SCALE} times that, plus a small charge
 * for every quarter in which hands stand above the usual crew or above the people there are. The true cost only sees a week's
 * highest quarter; the charge lets a search see that a peak gets narrower before it gets lower.
 */
public final class Timetable {
    /** Guide units in one point. */
    public static final int SCALE = 64;

    /** Stands for "not placed". */
    public static final int OUT = -1;

    /** The season. */
    public final SeasonArrays a;

    /** Starts of the operations, or {@link #OUT}. */
    public final int[] start;

    /** Most hands at work at once, by week. */
    public final int[] peak;

    /** Extra hands, by week. */
    public final int[] extra;

    final int[] peopleSlack;
    final int[] leastSlack;
    final int[] busy;
    final int[] lacking;
    final int[] hoistSlack;
    final int[] placeSlack;
    final int[] poolSlack;
    final int even;
    final int overtimePrice;
    final int unevenPrice;
    final int shortCharge;
    final int busyCharge;
    private final int[] firstAt;
    private final int[] nextAt;
    private final int[] previousAt;
    private final int kinds;
    private long points;
    private long guide;

    /**
     * An empty timetable.
     *
     * @param a the season
     * @param chargePercent the small charge, in per cent of the price of the same hand for a week divided by the week's quarters
     */
    public Timetable(SeasonArrays a, int chargePercent) {
        this.a = a;
        start = new int[a.n];
        Arrays.fill(start, OUT);
        int weeks = a.extraHands.length;
        peak = new int[weeks];
        extra = new int[weeks];
        peopleSlack = a.people.slack();
        kinds = a.people.kinds;
        leastSlack = new int[a.quarters * kinds];
        busy = new int[a.quarters];
        lacking = new int[a.quarters];
        hoistSlack = a.hoists.slack();
        placeSlack = a.places.slack();
        poolSlack = a.pools.slack();
        even = a.problem.yard().evenHands();
        overtimePrice = a.problem.weights().overtimePerHandWeek();
        unevenPrice = a.problem.weights().unevenPerHand();
        shortCharge = SCALE * overtimePrice * chargePercent / 100 / a.quartersPerWeek;
        busyCharge = SCALE * unevenPrice * chargePercent / 100 / a.quartersPerWeek;
        for (int q = 0; q < a.quarters; q++) {
            recount(q);
        }
        firstAt = new int[a.quarters + 1];
        Arrays.fill(firstAt, OUT);
        nextAt = new int[a.n];
        previousAt = new int[a.n];
    }

    /** One operation that starts at {@code q}, or {@link #OUT}; {@link #nextWithSameStart} gives the others. */
    public int firstAt(int q) {
        return firstAt[q];
    }

    /** The next operation that starts when operation {@code i} does, or {@link #OUT}. */
    public int nextWithSameStart(int i) {
        return nextAt[i];
    }

    private void link(int i, int q) {
        int next = firstAt[q];
        firstAt[q] = i;
        nextAt[i] = next;
        previousAt[i] = OUT;
        if (next != OUT) {
            previousAt[next] = i;
        }
    }

    private void unlink(int i, int q) {
        if (previousAt[i] == OUT) {
            firstAt[q] = nextAt[i];
        } else {
            nextAt[previousAt[i]] = nextAt[i];
        }
        if (nextAt[i] != OUT) {
            previousAt[nextAt[i]] = previousAt[i];
        }
    }

    /** True cost of what is placed. */
    public long points() {
        return points;
    }

    /** Cost the search is led by. */
    public long guide() {
        return guide;
    }

    /** Cost of one week's extra hands and peak. */
    int weekCost(int extraHands, int peakHands) {
        return overtimePrice * extraHands + unevenPrice * Math.max(0, peakHands - even);
    }

    /** Places operation {@code i} at {@code q}; the caller has made sure that it fits. */
    public void add(int i, int q) {
        start[i] = q;
        link(i, q);
        change(i, q, 1);
        int cost = a.startCost(i, q);
        points += cost;
        guide += (long) cost * SCALE;
        changeStay(i, 1);
    }

    /** Takes operation {@code i} out. */
    public void remove(int i) {
        int q = start[i];
        unlink(i, q);
        changeStay(i, -1);
        int cost = a.startCost(i, q);
        points -= cost;
        guide -= (long) cost * SCALE;
        change(i, q, -1);
        start[i] = OUT;
    }

    /** Makes the timetable hold exactly these starts. */
    public void set(int[] starts) {
        for (int i = 0; i < a.n; i++) {
            if (start[i] != OUT && start[i] != starts[i]) {
                remove(i);
            }
        }
        for (int i = 0; i < a.n; i++) {
            if (start[i] != starts[i]) {
                add(i, starts[i]);
            }
        }
    }

    private void change(int i, int q, int sign) {
        int end = q + a.length[i];
        if (a.skill[i] >= 0) {
            changePeople(a.skill[i], sign * a.hands[i], q, end);
        }
        if (a.liftClass[i] >= 0) {
            use(a.hoists, hoistSlack, a.liftClass[i], sign, q, end);
        }
        int[] needs = a.needs[i];
        for (int x = 0; x < needs.length; x += 2) {
            use(a.pools, poolSlack, needs[x], sign * needs[x + 1], q, end);
        }
    }

    private static void use(Limits limits, int[] slack, int kind, int amount, int from, int to) {
        for (int l : limits.ofKind[kind]) {
            for (int q = from; q < to; q++) {
                slack[q * limits.count + l] -= amount;
            }
        }
    }

    /** Keeps the stay of a lift or launch: from lift to the end of launch, or just the one that is placed. */
    private void changeStay(int i, int sign) {
        int s = a.stay[i];
        if (s < 0) {
            return;
        }
        int lift = start[a.stayLift[s]];
        int launch = start[a.stayLaunch[s]];
        int own = start[i];
        int from = own;
        int to = own + a.length[i];
        if (i == a.stayLift[s] && launch != OUT) {
            to = launch;
        } else if (i == a.stayLaunch[s] && lift != OUT) {
            from = Math.min(from, lift + a.length[a.stayLift[s]]);
        }
        use(a.places, placeSlack, a.stayClass[s], sign, from, to);
    }

    private void changePeople(int skill, int amount, int from, int to) {
        int[] limits = a.people.ofKind[skill];
        int count = a.people.count;
        int q = from;
        while (q < to) {
            int week = q / a.quartersPerWeek;
            int weekEnd = Math.min(to, (week + 1) * a.quartersPerWeek);
            int before = weekCost(extra[week], peak[week]);
            for (; q < weekEnd; q++) {
                for (int l : limits) {
                    peopleSlack[q * count + l] -= amount;
                }
                guide -= charge(q);
                busy[q] += amount;
                recount(q);
                guide += charge(q);
            }
            reweek(week);
            int change = weekCost(extra[week], peak[week]) - before;
            points += change;
            guide += (long) change * SCALE;
        }
    }

    private int charge(int q) {
        return shortCharge * lacking[q] + busyCharge * Math.max(0, busy[q] - even);
    }

    private void recount(int q) {
        int count = a.people.count;
        int least = 0;
        for (int k = 0; k < kinds; k++) {
            int slack = Integer.MAX_VALUE;
            for (int l : a.people.ofKind[k]) {
                slack = Math.min(slack, peopleSlack[q * count + l]);
            }
            leastSlack[q * kinds + k] = slack;
            least = Math.min(least, slack);
        }
        lacking[q] = -least;
    }

    private void reweek(int week) {
        int from = week * a.quartersPerWeek;
        int most = 0;
        int mostShort = 0;
        for (int q = from; q < from + a.quartersPerWeek; q++) {
            most = Math.max(most, busy[q]);
            mostShort = Math.max(mostShort, lacking[q]);
        }
        peak[week] = most;
        extra[week] = mostShort;
    }

    /** Hands at work in quarter {@code q}. */
    public int busy(int q) {
        return busy[q];
    }

    /** Hands missing in quarter {@code q}. */
    public int missing(int q) {
        return lacking[q];
    }
}

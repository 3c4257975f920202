package sternwright.season.arrays;

/** What it would add to the guide cost of a timetable to start one operation at each quarter of a range. */
public final class MarginalCost {
    /** Stands for "not possible". */
    public static final int NEVER = Integer.MAX_VALUE / 8;

    private final Timetable t;
    private final SeasonArrays a;

    /** Costs on {@code timetable}, whatever it holds when asked. */
    public MarginalCost(Timetable timetable) {
        t = timetable;
        a = timetable.a;
    }

    /**
     * Fills {@code out[q - from]} for the starts {@code from} to {@code to}, both included.
     *
     * @param i an operation that is not placed
     */
    public void fill(int i, int from, int to, int[] out) {
        int first = Math.max(from, firstByPlace(i, from));
        int last = Math.min(to, lastByPlace(i, to));
        for (int q = from; q <= to; q++) {
            out[q - from] = q < first || q > last ? NEVER : at(i, q);
        }
    }

    /** The cost of one start; of the places of a stay only its own quarters are looked at. */
    private int at(int i, int q) {
        int end = q + a.length[i];
        if (!a.dayAllowed(i, q) || !hasHoistAndPools(i, q, end)) {
            return NEVER;
        }
        int own = a.startCost(i, q) * Timetable.SCALE;
        return a.skill[i] < 0 ? own : Math.min(NEVER, own + people(a.skill[i], a.hands[i], q, end));
    }

    private boolean hasHoistAndPools(int i, int q, int end) {
        int s = a.stay[i];
        if (s >= 0 && lastFreeFrom(s, q, end) < end) {
            return false;
        }
        if (a.liftClass[i] >= 0 && !has(a.hoists, t.hoistSlack, a.liftClass[i], 1, q, end)) {
            return false;
        }
        int[] needs = a.needs[i];
        for (int x = 0; x < needs.length; x += 2) {
            if (!has(a.pools, t.poolSlack, needs[x], needs[x + 1], q, end)) {
                return false;
            }
        }
        return true;
    }

    private static boolean has(Limits limits, int[] slack, int kind, int amount, int from, int to) {
        for (int l : limits.ofKind[kind]) {
            for (int q = from; q < to; q++) {
                if (slack[q * limits.count + l] < amount) {
                    return false;
                }
            }
        }
        return true;
    }

    private int people(int skill, int hands, int from, int to) {
        int kinds = a.people.kinds;
        int even = t.even;
        int cost = 0;
        int q = from;
        while (q < to) {
            int week = q / a.quartersPerWeek;
            int weekEnd = Math.min(to, (week + 1) * a.quartersPerWeek);
            int extra = t.extra[week];
            int peak = t.peak[week];
            int most = a.extraHands[week];
            for (; q < weekEnd; q++) {
                int need = hands - t.leastSlack[q * kinds + skill];
                if (need > most && need > 0) {
                    return NEVER;
                }
                if (need > t.lacking[q]) {
                    cost += t.shortCharge * (need - t.lacking[q]);
                    extra = Math.max(extra, need);
                }
                int busy = t.busy[q] + hands;
                if (busy > even) {
                    cost += t.busyCharge * (busy - Math.max(even, t.busy[q]));
                    peak = Math.max(peak, busy);
                }
            }
            cost += Timetable.SCALE * (t.weekCost(extra, peak) - t.weekCost(t.extra[week], t.peak[week]));
        }
        return cost;
    }

    /** First start of a lift from which its place is free until its launch. */
    private int firstByPlace(int i, int from) {
        int s = a.stay[i];
        if (s < 0 || i != a.stayLift[s] || t.start[a.stayLaunch[s]] == Timetable.OUT) {
            return from;
        }
        int q = t.start[a.stayLaunch[s]] - 1;
        while (q >= from && placeFree(s, q)) {
            q--;
        }
        return q + 1;
    }

    /** Last start of a launch up to which its boat's place is free since the lift. */
    private int lastByPlace(int i, int to) {
        int s = a.stay[i];
        if (s < 0 || i != a.stayLaunch[s] || t.start[a.stayLift[s]] == Timetable.OUT) {
            return to;
        }
        int lift = t.start[a.stayLift[s]];
        return lastFreeFrom(s, lift + a.length[a.stayLift[s]], to + a.length[i]) - a.length[i];
    }

    /** First quarter from {@code from} up to {@code to} at which no place is free for stay {@code s}. */
    public int lastFreeFrom(int s, int from, int to) {
        int q = from;
        while (q < to && placeFree(s, q)) {
            q++;
        }
        return q;
    }

    private boolean placeFree(int s, int q) {
        int count = a.places.count;
        for (int l : a.places.ofKind[a.stayClass[s]]) {
            if (t.placeSlack[q * count + l] < 1) {
                return false;
            }
        }
        return true;
    }
}

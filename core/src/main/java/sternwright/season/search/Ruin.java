package sternwright.season.search;

import java.util.Arrays;
import java.util.SplittableRandom;
import sternwright.season.arrays.SeasonArrays;
import sternwright.season.arrays.Timetable;

/** Chooses which halves to take out: around a costly quarter, around a late boat, or anywhere. */
final class Ruin {
    private final SeasonArrays a;
    private final Timetable t;
    private final SplittableRandom random;
    private final int[] chosen = new int[64];
    private final boolean[] isChosen;
    private final int longest;
    private final int even;
    private final int overtimePrice;
    private final int unevenPrice;
    private boolean[] movable;
    private int[] pool = new int[0];
    private int[] dated = new int[0];
    private int count;
    private int from;
    private int to;

    Ruin(Timetable timetable, SplittableRandom random) {
        t = timetable;
        a = timetable.a;
        this.random = random;
        isChosen = new boolean[a.halfOperations.length];
        longest = Math.max(1, Arrays.stream(a.length).max().orElse(1));
        even = a.problem.yard().evenHands();
        overtimePrice = a.problem.weights().overtimePerHandWeek();
        unevenPrice = a.problem.weights().unevenPerHand();
        movable = new boolean[a.n];
        Arrays.fill(movable, true);
        side(0, a.quarters, movable);
    }

    void side(int firstQ, int endQ, boolean[] mayMove) {
        from = firstQ;
        to = endQ;
        movable = mayMove;
        pool = java.util.stream.IntStream.range(0, a.n).filter(i -> mayMove[i]).toArray();
        dated = Arrays.stream(pool)
                .filter(i -> a.latePerQ[i] > 0 || a.earlyPerQ[i] > 0 || a.promised[i] >= 0)
                .toArray();
    }

    boolean movable(int i) {
        return movable[i];
    }

    int half(int index) {
        return chosen[index];
    }

    /** Chooses about {@code wanted} halves; returns how many. */
    int choose(int wanted) {
        for (int h = 0; h < count; h++) {
            isChosen[chosen[h]] = false;
        }
        count = 0;
        if (pool.length == 0) {
            return 0;
        }
        int seed = seedQuarter();
        around(seed, wanted);
        return count;
    }

    private int seedQuarter() {
        int kind = random.nextInt(4);
        if (kind < 2) {
            int week = costlyWeek();
            if (week >= 0) {
                return costlyQuarter(week);
            }
        } else if (kind == 2 && dated.length > 0) {
            for (int tries = 0; tries < 24; tries++) {
                int i = dated[random.nextInt(dated.length)];
                if (a.startCost(i, t.start[i]) > 0) {
                    take(i);
                    return t.start[i];
                }
            }
        }
        int i = pool[random.nextInt(pool.length)];
        take(i);
        return t.start[i];
    }

    private int weekCost(int week) {
        return overtimePrice * t.extra[week] + unevenPrice * Math.max(0, t.peak[week] - even);
    }

    private int costlyWeek() {
        int first = from / a.quartersPerWeek;
        int end = Math.min(t.peak.length, (to + a.quartersPerWeek - 1) / a.quartersPerWeek);
        int sum = 0;
        for (int w = first; w < end; w++) {
            sum += weekCost(w);
        }
        if (sum == 0) {
            return -1;
        }
        int draw = random.nextInt(sum);
        int week = first;
        while (draw >= weekCost(week)) {
            draw -= weekCost(week++);
        }
        return week;
    }

    /** A quarter at which the week's peak or its shortage stands. */
    private int costlyQuarter(int week) {
        int begin = week * a.quartersPerWeek;
        int turn = random.nextInt(a.quartersPerWeek);
        boolean byShortage = t.extra[week] > 0 && (t.peak[week] <= even || random.nextBoolean());
        for (int x = 0; x < a.quartersPerWeek; x++) {
            int q = begin + (turn + x) % a.quartersPerWeek;
            if (byShortage ? t.missing(q) == t.extra[week] : t.busy(q) == t.peak[week]) {
                takeActive(q, 1 + random.nextInt(3));
                return q;
            }
        }
        return begin + turn;
    }

    /** Takes some of the operations in progress at {@code q}. */
    private void takeActive(int q, int most) {
        int target = count + most;
        int turn = random.nextInt(longest);
        for (int x = 0; x < longest && count < target; x++) {
            int s = q - (turn + x) % longest;
            if (s < 0) {
                continue;
            }
            for (int i = t.firstAt(s); i != Timetable.OUT && count < target; i = t.nextWithSameStart(i)) {
                if (s + a.length[i] > q && a.skill[i] >= 0 && random.nextInt(3) > 0) {
                    take(i);
                }
            }
        }
    }

    private void around(int seed, int wanted) {
        int radius = a.quartersPerWeek / 2 + random.nextInt(2 * a.quartersPerWeek);
        for (int tries = 0; count < wanted && tries < 6 * wanted; tries++) {
            int q = seed - radius + random.nextInt(2 * radius + 1);
            if (q < 0 || q >= a.quarters) {
                continue;
            }
            int i = t.firstAt(q);
            if (i == Timetable.OUT) {
                continue;
            }
            for (int skip = random.nextInt(4); skip > 0 && t.nextWithSameStart(i) != Timetable.OUT; skip--) {
                i = t.nextWithSameStart(i);
            }
            take(i);
        }
    }

    private void take(int i) {
        int h = a.half[i];
        if (movable[i] && !isChosen[h] && count < chosen.length) {
            isChosen[h] = true;
            chosen[count++] = h;
        }
    }

    /** Order in which they go back: random. */
    void shuffle() {
        for (int h = count - 1; h > 0; h--) {
            int other = random.nextInt(h + 1);
            int swap = chosen[h];
            chosen[h] = chosen[other];
            chosen[other] = swap;
        }
    }
}

package sternwright.season.search;

import java.util.SplittableRandom;
import sternwright.season.arrays.SeasonArrays;
import sternwright.season.arrays.Timetable;

/**
 * Ruin and recreate on one side of the season: takes out a few halves that are near each other in time, puts them back one after
 * the other, and keeps the result if it is better, or worse by no more than the temperature allows.
 */
final class Annealing {
    private static final int FEWEST = 2;
    private static final int MOST = 5;

    /** One iteration in so many wanders, more often in small seasons. */
    private static final int WANDERING = 20;

    private static final int HALVES_PER_WANDERING = 10;

    private final SeasonArrays a;
    private final Timetable t;
    private final Insertion insertion;
    private final Ruin ruin;
    private final SplittableRandom random;
    private final double hot;
    private final double cold;
    private final int[] removed = new int[4096];
    private final int[] oldStart = new int[4096];
    private final int wandering;
    private final int[] best;
    private long bestPoints;
    private long done;

    Annealing(Timetable timetable, SplittableRandom random, double hot, double cold) {
        t = timetable;
        a = timetable.a;
        this.random = random;
        this.hot = hot;
        this.cold = cold;
        insertion = new Insertion(timetable, random);
        ruin = new Ruin(timetable, random);
        wandering = Math.min(WANDERING, 1 + a.halfOperations.length / HALVES_PER_WANDERING);
        best = timetable.start.clone();
        bestPoints = timetable.points();
    }

    /** Limits all moves to the quarters from {@code firstQ} to {@code endQ} and to operations that {@code movable} marks. */
    void side(int firstQ, int endQ, boolean[] movable) {
        insertion.between(firstQ, endQ);
        ruin.side(firstQ, endQ, movable);
    }

    /** Starts of the best plan seen. */
    int[] best() {
        return best;
    }

    long bestPoints() {
        return bestPoints;
    }

    long iterations() {
        return done;
    }

    void run(Budget budget, double until) {
        double spent = budget.spent(done);
        while (spent < until) {
            double temperature = hot * Math.pow(cold / hot, spent) * Timetable.SCALE;
            for (int step = 0; step < 8; step++) {
                iterate(temperature);
                done++;
            }
            spent = budget.spent(done);
        }
    }

    private void iterate(double temperature) {
        long before = t.guide();
        int halves = ruin.choose(FEWEST + random.nextInt(MOST - FEWEST + 1));
        int count = takeOut(halves);
        if (count == 0) {
            return;
        }
        ruin.shuffle();
        insertion.wander(random.nextInt(wandering) == 0);
        boolean whole = true;
        for (int h = 0; h < halves && whole; h++) {
            whole = insertion.half(ruin.half(h));
        }
        double allowed = before - temperature * Math.log(1 - random.nextDouble());
        if (!whole || t.guide() > allowed) {
            putBack(count);
        } else if (t.points() < bestPoints) {
            bestPoints = t.points();
            System.arraycopy(t.start, 0, best, 0, best.length);
        }
    }

    private int takeOut(int halves) {
        int count = 0;
        for (int h = 0; h < halves; h++) {
            for (int i : a.halfOperations[ruin.half(h)]) {
                if (ruin.movable(i) && count < removed.length) {
                    removed[count] = i;
                    oldStart[count++] = t.start[i];
                    t.remove(i);
                }
            }
        }
        return count;
    }

    private void putBack(int count) {
        for (int r = 0; r < count; r++) {
            if (t.start[removed[r]] != Timetable.OUT) {
                t.remove(removed[r]);
            }
        }
        for (int r = 0; r < count; r++) {
            t.add(removed[r], oldStart[r]);
        }
    }

    /** Forgets the best plan seen, for a new round that starts from another one. */
    void startFrom(int[] starts) {
        t.set(starts);
        System.arraycopy(starts, 0, best, 0, best.length);
        bestPoints = t.points();
    }

    /** Starts of the plan it stands at. */
    int[] current() {
        return t.start;
    }
}

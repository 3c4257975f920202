package sternwright.visit.solver;

import java.util.Arrays;

/** A candidate plan as arrays: the visits held and the doings of every work. */
final class Schedule {
    /** Visits held, afloat 0 to T-1, ashore T to 2T-1. */
    final boolean[] open;

    /** Months done, by work. */
    final int[][] months;

    /** Phases done, by work. */
    final int[][] phases;

    /** What it costs, infinite if it breaks a rule. */
    double cost = Double.POSITIVE_INFINITY;

    Schedule(int slots, int works) {
        open = new boolean[slots];
        months = new int[works][0];
        phases = new int[works][0];
    }

    /** Takes over another. */
    void copy(Schedule other) {
        System.arraycopy(other.open, 0, open, 0, open.length);
        System.arraycopy(other.months, 0, months, 0, months.length);
        System.arraycopy(other.phases, 0, phases, 0, phases.length);
        cost = other.cost;
    }

    /** Whether the work is done in a month of the span. */
    boolean done(int work, int first, int last) {
        return Arrays.stream(months[work]).anyMatch(t -> t >= first && t <= last);
    }
}

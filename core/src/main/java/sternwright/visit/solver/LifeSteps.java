package sternwright.visit.solver;

import sternwright.visit.problem.Doing;
import sternwright.visit.problem.Life;
import sternwright.visit.problem.Work;

/** What one step of a work's path uses of its life, and what it costs. */
final class LifeSteps {
    /** Last done before the horizon. */
    static final int START = -1;

    private static final double SAME = 1e-9;

    private final Work work;
    private final int horizon;
    private final double[] hoursBefore;

    LifeSteps(Work work, int horizon) {
        this.work = work;
        this.horizon = horizon;
        hoursBefore = new double[horizon + 1];
        for (int m = 0; m < horizon; m++) {
            hoursBefore[m + 1] =
                    hoursBefore[m] + work.life().use().hoursPerMonth().get(m);
        }
    }

    /** Share of life used at the start of a month, by whichever clause comes first; 0 for a work without interval. */
    double used(int from, int to) {
        Life life = work.life();
        if (from == START && work.rules().dueAtFirstVisit()) {
            return 1;
        }
        double months = from == START ? life.monthsUsed() + to : to - from;
        double hours = from == START ? life.hoursUsed() + hoursBefore[to] : hoursBefore[to] - hoursBefore[from];
        return Math.max(life.months() > 0 ? months / life.months() : 0, life.hours() > 0 ? hours / life.hours() : 0);
    }

    /**
     * Last month in which the work is not late: -1 if it is late already at the start, the horizon if it is not late even
     * then.
     */
    int dueMonth(int from) {
        if (from == START && work.rules().dueAtFirstVisit()) {
            return -1;
        }
        int due = from;
        while (due < horizon && used(from, due + 1) <= 1 + SAME) {
            due++;
        }
        return due;
    }

    /** Whether enough life is used to do the work again. */
    boolean ripe(int from, int to) {
        return !work.life().bounded() || used(from, to) >= work.rules().earliestFraction() - SAME;
    }

    /** The same step done afloat, with what that costs more. */
    Doing afloat(Doing d) {
        long extra = work.phases().get(d.phase()).afloatExtraCents();
        return new Doing(
                d.work(), d.phase(), d.from(), d.to(), d.workCents() + extra, d.unusedCents(), d.riskCents(), 0);
    }

    /** The step that ends with the phase done in a month, ashore or without extra cost. */
    Doing done(int index, int phase, int from, int to) {
        long cost = work.phases().get(phase).costCents();
        double unused = work.life().bounded() ? Math.max(0, 1 - used(from, to)) : 0;
        return new Doing(
                index, phase, from, to, cost, cents(cost * work.materialShare() * unused), risk(dueMonth(from), to), 0);
    }

    /** The step from the last doing to the end of the horizon. */
    Doing end(int index, int phase, int from) {
        if (work.rules().once() && from != START) {
            return new Doing(index, phase, from, horizon, 0, 0, 0, 0);
        }
        long cost = work.phases().get(phase).costCents();
        double used = work.life().bounded() ? Math.min(1, used(from, horizon)) : 0;
        return new Doing(index, phase, from, horizon, 0, 0, risk(dueMonth(from), horizon), cents(cost * used));
    }

    /** Rounded half up, a millionth in hand, so that the last bit of a sum of hours never decides a half. */
    private static long cents(double amount) {
        return Math.round(amount + 1e-6);
    }

    private long risk(int due, int month) {
        return work.life().bounded() ? work.riskPerMonthCents() * Math.max(0, month - due) : 0;
    }
}

package sternwright.visit.solver;

import java.util.Arrays;
import java.util.function.IntUnaryOperator;
import sternwright.visit.problem.MonthSpan;
import sternwright.visit.problem.Place;
import sternwright.visit.problem.VisitProblem;
import sternwright.visit.problem.VisitSlot;
import sternwright.visit.problem.Work;
import sternwright.visit.problem.WorkPhase;

/**
 * All steps one work may take, as a graph over (phase, month) nodes. Months are counted with one added, so that 0 is the
 * start; places are bits (1 afloat, 2 ashore). The solver strikes out steps here as it proves them useless.
 */
final class WorkPaths {
    static final double NONE = Double.POSITIVE_INFINITY;

    final int phases;
    final int firstPhase;
    final int servicePoint;
    final boolean dueAtFirstVisit;
    /** Cost of the step into a phase, by phase, month last done + 1, month done. */
    final double[][][] step;
    /** Cost of the step to the end, by next phase and month last done + 1. */
    final double[][] end;
    /** Where the phase may be done, by phase and month. */
    final byte[][] fit;
    /** Where the first phase could be done under the rules, whatever is struck out. */
    final byte[] firstFit;

    /** What each phase costs more if done afloat. */
    final double[] afloatExtra;

    /** First and last month that may follow, by month last done + 1. */
    final int[] first;

    final int[] last;

    /** Months that may follow, by phase done then and month last done + 1: what is left of {@link #step}. */
    final int[][][] targets;

    /** Cost of each of them. */
    final double[][][] costs;

    private final int horizon;

    WorkPaths(VisitProblem problem, int index, int notBefore) {
        Work work = problem.works().get(index);
        horizon = problem.horizon();
        phases = work.phases().size();
        firstPhase = work.nextPhase();
        servicePoint = work.servicePoint();
        dueAtFirstVisit = work.rules().dueAtFirstVisit();
        step = new double[phases][horizon + 1][];
        end = new double[phases][horizon + 1];
        fit = new byte[phases][horizon];
        afloatExtra =
                work.phases().stream().mapToDouble(WorkPhase::afloatExtraCents).toArray();
        first = new int[horizon + 1];
        last = new int[horizon + 1];
        targets = new int[phases][horizon + 1][];
        costs = new double[phases][horizon + 1][];
        LifeSteps steps = new LifeSteps(work, horizon);
        for (int k = 0; k < phases; k++) {
            fillFit(problem, work.phases().get(k), fit[k]);
        }
        for (int from = LifeSteps.START; from < horizon; from++) {
            span(work, steps, from, notBefore);
            for (int k = 0; k < phases; k++) {
                fillSteps(steps, index, k, from);
            }
            if (!mayEnd(work, steps.dueMonth(from), from)) {
                for (int k = 0; k < phases; k++) {
                    end[k][from + 1] = NONE;
                }
            }
        }
        forbid(problem);
        firstFit = fit[firstPhase].clone();
        compact();
    }

    private void forbid(VisitProblem problem) {
        for (VisitSlot slot : problem.demands().forbidden()) {
            for (int k = 0; k < phases; k++) {
                if (slot.month() < horizon) {
                    fit[k][slot.month()] &= (byte) ~bit(slot.place());
                }
            }
        }
    }

    /** First month with a visit that fits the next doing, given the places visited by month; the horizon if none. */
    int firstFitting(IntUnaryOperator visited) {
        for (int t = first[0]; t < horizon; t++) {
            if ((firstFit[t] & visited.applyAsInt(t)) != 0) {
                return t;
            }
        }
        return horizon;
    }

    /** Lists the steps that are left; call after any were struck out. */
    void compact() {
        for (int k = 0; k < phases; k++) {
            for (int f = 0; f <= horizon; f++) {
                int[] to = new int[horizon];
                int n = 0;
                for (int t = first[f]; t <= last[f]; t++) {
                    if (step[k][f][t] < NONE && fit[k][t] != 0) {
                        to[n++] = t;
                    }
                }
                targets[k][f] = Arrays.copyOf(to, n);
                costs[k][f] = new double[n];
                for (int i = 0; i < n; i++) {
                    costs[k][f][i] = step[k][f][to[i]];
                }
            }
        }
    }

    /** Fewest months between two doings. */
    int fewestBetween() {
        int fewest = horizon;
        for (int f = 1; f <= horizon; f++) {
            if (first[f] <= last[f]) {
                fewest = Math.min(fewest, first[f] - (f - 1));
            }
        }
        return fewest;
    }

    /** Bit of a place. */
    static byte bit(Place place) {
        return place == Place.AFLOAT ? (byte) 1 : (byte) 2;
    }

    /** The phase that follows. */
    int next(int phase) {
        return phase + 1 == phases ? 0 : phase + 1;
    }

    private void fillFit(VisitProblem problem, WorkPhase phase, byte[] row) {
        for (int t = 0; t < horizon; t++) {
            for (Place place : phase.places()) {
                if (phase.season().contains(problem.calendarMonth(t))
                        && problem.months().get(t).possible(place)) {
                    row[t] |= bit(place);
                }
            }
        }
    }

    private void span(Work work, LifeSteps steps, int from, int notBefore) {
        int due = steps.dueMonth(from);
        int lo = from + 1;
        while (lo < horizon && !steps.ripe(from, lo)) {
            lo++;
        }
        int hi = work.life().bounded() ? due + work.rules().maxLateMonths(from) : horizon;
        if (from == LifeSteps.START) {
            if (hi < 0) {
                hi = firstPossible();
            }
            lo = Math.max(lo, notBefore);
        } else if (work.rules().once()) {
            hi = -1;
        }
        for (MonthSpan span : work.rules().mustFallIn()) {
            if (from < span.first()) {
                hi = Math.min(hi, span.last());
            }
        }
        first[from + 1] = lo;
        last[from + 1] = Math.min(hi, horizon - 1);
    }

    private int firstPossible() {
        int t = 0;
        while (t < horizon && fit[firstPhase][t] == 0) {
            t++;
        }
        return t;
    }

    private boolean mayEnd(Work work, int due, int from) {
        for (MonthSpan span : work.rules().mustFallIn()) {
            if (from < span.first() && span.first() < horizon) {
                return false;
            }
        }
        boolean over = work.rules().once() && from != LifeSteps.START;
        return over || !work.life().bounded() || due + work.rules().maxLateMonths(from) >= horizon;
    }

    private void fillSteps(LifeSteps steps, int index, int phase, int from) {
        double[] row = new double[horizon];
        Arrays.fill(row, NONE);
        for (int t = first[from + 1]; t <= last[from + 1]; t++) {
            row[t] = steps.done(index, phase, from, t).totalCents();
        }
        step[phase][from + 1] = row;
        end[phase][from + 1] = steps.end(index, phase, from).totalCents();
    }
}

package sternwright.visit.solver;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import sternwright.visit.problem.FollowOn;
import sternwright.visit.problem.VisitSlot;

/** What is still open under the demands and a chain of decisions: visits, set-ups, and the steps of every work. */
final class Scope {
    private final PathModel model;
    private final int horizon;
    /** State of each slot (afloat 0 to T-1, ashore T to 2T-1), as in {@link HaulOut}. */
    final byte[] visit;

    /** State of each set-up, point x horizon + month. */
    final byte[] setUp;

    /** Where each phase may still be done, by work, phase, month. */
    final byte[][][] fit;

    /** Last month that may follow, by work and month last done + 1. */
    final int[][] last;

    /** Whether a work may rest after a month + 1. */
    final boolean[][] mayEnd;

    private final byte[] baseVisit;
    private final byte[] baseSetUp;

    Scope(PathModel model) {
        this.model = model;
        horizon = model.horizon;
        baseVisit = new byte[2 * horizon];
        baseSetUp = new byte[model.points * horizon];
        for (VisitSlot slot : model.problem.demands().forbidden()) {
            if (slot.month() < horizon) {
                baseVisit[slot(slot)] = HaulOut.CLOSED;
            }
        }
        for (VisitSlot slot : model.problem.demands().forced()) {
            if (slot.month() < horizon) {
                baseVisit[slot(slot)] = HaulOut.OPEN;
            }
        }
        visit = baseVisit.clone();
        setUp = baseSetUp.clone();
        fit = new byte[model.works][][];
        last = new int[model.works][horizon + 1];
        mayEnd = new boolean[model.works][horizon + 1];
        for (int j = 0; j < model.works; j++) {
            fit[j] = new byte[model.paths[j].phases][horizon];
        }
        load(null);
    }

    private int slot(VisitSlot slot) {
        return slot.place().ordinal() * horizon + slot.month();
    }

    /** Closes or opens a slot for good, as proven. */
    void settleVisit(int slot, byte state) {
        baseVisit[slot] = state;
    }

    /** Closes or opens a set-up for good, as proven. */
    void settleSetUp(int index, byte state) {
        baseSetUp[index] = state;
    }

    /** The state of a slot before any decision. */
    byte settledVisit(int slot) {
        return baseVisit[slot];
    }

    /** Takes up the settled states and a chain of decisions. */
    void load(@Nullable Decision decision) {
        System.arraycopy(baseVisit, 0, visit, 0, visit.length);
        System.arraycopy(baseSetUp, 0, setUp, 0, setUp.length);
        for (Decision d = decision; d != null; d = d.before()) {
            byte state = d.open() ? HaulOut.OPEN : HaulOut.CLOSED;
            switch (d.kind()) {
                case VISIT -> visit[d.index()] = state;
                case SET_UP -> setUp[d.index()] = state;
                case DONE, CALLED -> {}
            }
        }
        for (int j = 0; j < model.works; j++) {
            loadWork(j);
        }
        for (Decision d = decision; d != null; d = d.before()) {
            if (d.kind() == Decision.Kind.DONE) {
                loadDone(d.index() / horizon, d.index() % horizon, d.open());
            } else if (d.kind() == Decision.Kind.CALLED) {
                loadCalled(model.followOns[d.index() / horizon], d.index() % horizon, d.open());
            }
        }
    }

    private void loadWork(int j) {
        WorkPaths w = model.paths[j];
        System.arraycopy(w.last, 0, last[j], 0, horizon + 1);
        Arrays.fill(mayEnd[j], true);
        for (int k = 0; k < w.phases; k++) {
            for (int t = 0; t < horizon; t++) {
                byte bits = w.fit[k][t];
                if (visit[t] == HaulOut.CLOSED) {
                    bits &= 2;
                }
                if (visit[horizon + t] == HaulOut.CLOSED) {
                    bits &= 1;
                }
                if (w.servicePoint >= 0 && setUp[w.servicePoint * horizon + t] == HaulOut.CLOSED) {
                    bits = 0;
                }
                fit[j][k][t] = bits;
            }
        }
        if (w.dueAtFirstVisit) {
            int held = w.firstFitting(
                    t -> (visit[t] == HaulOut.OPEN ? 1 : 0) | (visit[horizon + t] == HaulOut.OPEN ? 2 : 0));
            last[j][0] = Math.min(last[j][0], held);
            mayEnd[j][0] &= held >= horizon;
        }
    }

    private void loadDone(int j, int month, boolean done) {
        if (done) {
            mustFallIn(j, month, month);
            for (FollowOn f : model.asTrigger.get(j)) {
                if (f.always() && model.asks(f, month)) {
                    mustFallIn(f.follower(), month + f.minLagMonths(), model.lastFollowing(f, month));
                }
            }
            return;
        }
        close(j, month);
        for (FollowOn f : model.asFollower.get(j)) {
            int t = month - f.minLagMonths();
            if (t >= 0
                    && model.asks(f, t)
                    && model.lastFollowing(f, t) == month
                    && f.minLagMonths() == f.maxLagMonths()) {
                closeCalling(f, t);
            }
        }
    }

    private void loadCalled(FollowOn f, int month, boolean followed) {
        if (followed) {
            mustFallIn(f.follower(), month + f.minLagMonths(), model.lastFollowing(f, month));
        } else {
            closeCalling(f, month);
        }
    }

    /** The trigger is not done in a month in a phase that asks for the follower. */
    private void closeCalling(FollowOn f, int month) {
        byte[][] rows = fit[f.trigger()];
        for (int k = 0; k < rows.length; k++) {
            if (f.calledBy(k)) {
                rows[k][month] = 0;
            }
        }
    }

    private void close(int j, int month) {
        for (byte[] row : fit[j]) {
            row[month] = 0;
        }
    }

    /** The work must be done at least once within the months. */
    void mustFallIn(int j, int firstMonth, int lastMonth) {
        for (int f = 0; f <= firstMonth; f++) {
            last[j][f] = Math.min(last[j][f], lastMonth);
            mayEnd[j][f] = false;
        }
    }
}

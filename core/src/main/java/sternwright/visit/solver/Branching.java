package sternwright.visit.solver;

import org.jspecify.annotations.Nullable;
import sternwright.visit.problem.BoatMonth;
import sternwright.visit.problem.FollowOn;

/** Chooses what to decide next: the visit, set-up or linked doing on which the averages are most undecided. */
final class Branching {
    private static final double DECIDED = 0.03;

    private final PathModel model;
    private final Scope scope;
    private final PricedBound bound;
    private final int horizon;

    Branching(PathModel model, Scope scope, PricedBound bound) {
        this.model = model;
        this.scope = scope;
        this.bound = bound;
        horizon = model.horizon;
    }

    /** The next decision, its likelier side first; null if nothing is left. */
    @Nullable
    Decision choose(@Nullable Decision before) {
        Decision visit = visit(before, DECIDED);
        if (visit != null) {
            return visit;
        }
        Decision setUp = setUp(before, DECIDED);
        if (setUp != null) {
            return setUp;
        }
        return linked(before);
    }

    /** The next decision on anything left open, however clear it looks; null if nothing is left. */
    @Nullable
    Decision chooseAny(@Nullable Decision before) {
        Decision anyVisit = visit(before, -1);
        return anyVisit != null ? anyVisit : setUp(before, -1);
    }

    private @Nullable Decision visit(@Nullable Decision before, double least) {
        int best = -1;
        double bestScore = -1;
        for (int s = 0; s < 2 * horizon; s++) {
            double undecided = undecided(bound.average[s]);
            if (scope.visit[s] == HaulOut.FREE && undecided > least && usable(s)) {
                double score = (undecided + 1e-6) * weight(s);
                if (score > bestScore) {
                    bestScore = score;
                    best = s;
                }
            }
        }
        return best < 0 ? null : new Decision(Decision.Kind.VISIT, best, bound.average[best] > 0.5, before);
    }

    private static double undecided(double average) {
        return Math.min(average, 1 - average);
    }

    private double weight(int slot) {
        BoatMonth month = model.problem.months().get(slot % horizon);
        long cost = slot < horizon
                ? model.problem.tariff().callOutAfloatCents()
                : model.problem.tariff().workVisitAshoreCents()
                        + (month.ashorePaid() ? 0 : model.problem.tariff().liftLaunchCents());
        return 1 + cost;
    }

    private boolean usable(int slot) {
        int bit = slot < horizon ? 1 : 2;
        for (byte[][] work : scope.fit) {
            for (byte[] row : work) {
                if ((row[slot % horizon] & bit) != 0) {
                    return true;
                }
            }
        }
        return false;
    }

    private boolean usable(int point, int month) {
        for (int j = 0; j < model.works; j++) {
            for (byte[] row : model.paths[j].servicePoint == point ? scope.fit[j] : new byte[0][]) {
                if (row[month] != 0) {
                    return true;
                }
            }
        }
        return false;
    }

    private @Nullable Decision setUp(@Nullable Decision before, double least) {
        int best = -1;
        double bestScore = -1;
        for (int i = 0; i < scope.setUp.length; i++) {
            double average = bound.average[2 * horizon + i];
            double score = (undecided(average) + 1e-6) * (1 + model.setUp[i / horizon]);
            boolean open = scope.setUp[i] == HaulOut.FREE && usable(i / horizon, i % horizon);
            if (open && undecided(average) > least && score > bestScore) {
                bestScore = score;
                best = i;
            }
        }
        return best < 0
                ? null
                : new Decision(Decision.Kind.SET_UP, best, bound.average[2 * horizon + best] > 0.5, before);
    }

    private @Nullable Decision linked(@Nullable Decision before) {
        int best = -1;
        double bestScore = DECIDED;
        for (FollowOn f : model.followOns) {
            for (int t = 0; t < horizon; t++) {
                for (int j : new int[] {f.follower(), f.trigger()}) {
                    double score = undecided(bound.averageDone(j, t));
                    if (score > bestScore && !decided(before, j * horizon + t)) {
                        bestScore = score;
                        best = j * horizon + t;
                    }
                }
            }
        }
        return best < 0 ? null : new Decision(Decision.Kind.DONE, best, true, before);
    }

    /** A trigger of the schedule that its follower does not follow, to be decided next; null if all are followed. */
    @Nullable
    Decision unfollowed(Schedule schedule, @Nullable Decision before) {
        for (int n = 0; n < model.followOns.length; n++) {
            FollowOn f = model.followOns[n];
            int[] months = schedule.months[f.trigger()];
            for (int i = 0; i < months.length; i++) {
                int t = months[i];
                boolean followed = schedule.done(f.follower(), t + f.minLagMonths(), model.lastFollowing(f, t));
                if (f.calledBy(schedule.phases[f.trigger()][i]) && model.asks(f, t) && !followed) {
                    return f.always()
                            ? new Decision(Decision.Kind.DONE, f.trigger() * horizon + t, true, before)
                            : new Decision(Decision.Kind.CALLED, n * horizon + t, true, before);
                }
            }
        }
        return null;
    }

    /**
     * A visit held for the number of visits alone that a work of unknown history would have to be done at, to be decided next; null if
     * there is none.
     */
    @Nullable
    Decision early(Schedule schedule, @Nullable Decision before) {
        for (int j = 0; j < model.works; j++) {
            WorkPaths w = model.paths[j];
            int done = schedule.months[j].length == 0 ? horizon : schedule.months[j][0];
            for (int s = 0; s < 2 * horizon && w.dueAtFirstVisit; s++) {
                int t = s % horizon;
                boolean fits = t >= w.first[0] && (w.firstFit[t] & (s < horizon ? 1 : 2)) != 0;
                if (t < done && fits && schedule.open[s] && scope.visit[s] == HaulOut.FREE) {
                    return new Decision(Decision.Kind.VISIT, s, false, before);
                }
            }
        }
        return null;
    }

    private static boolean decided(@Nullable Decision chain, int index) {
        for (Decision d = chain; d != null; d = d.before()) {
            if (d.kind() == Decision.Kind.DONE && d.index() == index) {
                return true;
            }
        }
        return false;
    }
}

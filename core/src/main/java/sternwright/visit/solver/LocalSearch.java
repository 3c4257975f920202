package sternwright.visit.solver;

/** Betters a plan by dropping, adding, moving and re-placing single visits until none of that helps. */
final class LocalSearch {
    private static final int REACH_MONTHS = 6;
    private static final double NEAR = 1.003;

    private final PathModel model;
    private final ScheduleBuilder builder;
    private final int horizon;
    private final boolean[] possible;
    /** The best plan so far. */
    final Schedule best;

    private int budget;

    LocalSearch(PathModel model) {
        this.model = model;
        builder = new ScheduleBuilder(model);
        horizon = model.horizon;
        best = new Schedule(2 * horizon, model.works);
        possible = new boolean[2 * horizon];
        for (int j = 0; j < model.works; j++) {
            for (byte[] row : model.paths[j].fit) {
                for (int t = 0; t < horizon; t++) {
                    possible[t] |= (row[t] & 1) != 0;
                    possible[horizon + t] |= (row[t] & 2) != 0;
                }
            }
        }
    }

    /** The greedy plan: every work in turn along its cheapest path, joining visits opened by those before it. */
    double greedy() {
        return take(builder.construct(new boolean[2 * horizon]));
    }

    /** The plan with every possible visit open to choose from. */
    double everyVisit() {
        return take(builder.build(possible.clone()));
    }

    /** The best plan on the visits given, others opened where needed. */
    double from(boolean[] visits) {
        return settled(builder.construct(visits.clone()));
    }

    /** The same, works sharing set-ups at first as the relaxation has them share. */
    double from(boolean[] visits, Relaxation relaxation, double[] prices) {
        builder.shares(relaxation, prices);
        double cost = from(visits);
        builder.halves();
        return cost;
    }

    /** A plan that comes near the best is worth settling its set-ups. */
    private double settled(double cost) {
        return take(cost < best.cost * NEAR ? builder.settleSetUps() : cost);
    }

    private double take(double cost) {
        if (cost < best.cost) {
            best.copy(builder.built);
        }
        return cost;
    }

    /** Betters the best plan with at most so many tries. */
    void improve(int tries) {
        budget = tries;
        boolean better = best.cost < WorkPaths.NONE;
        while (better && budget > 0) {
            better = drop() | shift() | swap() | add();
        }
        if (best.cost < WorkPaths.NONE) {
            settled(builder.build(best.open.clone()));
        }
    }

    private boolean attempt(boolean[] visits) {
        if (budget <= 0) {
            return false;
        }
        budget--;
        double before = best.cost;
        return take(builder.build(visits)) < before;
    }

    private boolean drop() {
        boolean better = false;
        for (int s = 0; s < 2 * horizon; s++) {
            if (best.open[s]) {
                boolean[] visits = best.open.clone();
                visits[s] = false;
                better |= attempt(visits);
            }
        }
        return better;
    }

    private boolean add() {
        boolean better = false;
        for (int s = 0; s < 2 * horizon; s++) {
            if (possible[s] && !best.open[s]) {
                boolean[] visits = best.open.clone();
                visits[s] = true;
                better |= attempt(visits);
            }
        }
        return better;
    }

    private boolean shift() {
        boolean better = false;
        for (int s = 0; s < 2 * horizon; s++) {
            int base = s < horizon ? 0 : horizon;
            for (int t = Math.max(base, s - REACH_MONTHS); t < Math.min(base + horizon, s + REACH_MONTHS + 1); t++) {
                if (best.open[s] && possible[t] && !best.open[t]) {
                    boolean[] visits = best.open.clone();
                    visits[s] = false;
                    visits[t] = true;
                    better |= attempt(visits);
                }
            }
        }
        return better;
    }

    private boolean swap() {
        boolean better = false;
        for (int s = 0; s < 2 * horizon; s++) {
            int other = s < horizon ? s + horizon : s - horizon;
            if (best.open[s] && possible[other] && !best.open[other]) {
                boolean[] visits = best.open.clone();
                visits[s] = false;
                visits[other] = true;
                better |= attempt(visits);
            }
        }
        return better;
    }

    PathModel model() {
        return model;
    }
}

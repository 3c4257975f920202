package sternwright.visit.solver;

import java.util.Arrays;
import sternwright.visit.problem.FollowOn;
import sternwright.visit.problem.VisitSlot;

/**
 * Places every work on given visits: work by work along its cheapest path, sharing set-ups with those placed before, again
 * and again until nothing moves. The result is a plan, seldom far from the best for those visits.
 */
final class ScheduleBuilder {
    private static final double NONE = WorkPaths.NONE;
    private static final int ROUNDS = 4;
    static final double PER_VISIT_TOO_MANY = 1e12;

    private final PathModel model;
    private final int horizon;
    private final ShortestPath path;
    private final double[][] price;
    /** What each work pays of a set-up at first, by work and month, before it is known which others share it. */
    private final double[][] firstShare;

    private final SharedSetUps sharing;
    /** How many works use a service point in a month; far below none where it may not be used. */
    final int[] pointUse;

    private final int[] openBits;
    private final boolean[] allMayEnd;
    private final int[] last;
    private final boolean[] mayEnd;
    private final OpeningPrices opening;
    private final byte[] fixed;
    private final HaulOut.Gains noGain;
    /** The plan last built. */
    final Schedule built;

    ScheduleBuilder(PathModel model) {
        this.model = model;
        horizon = model.horizon;
        int most = Arrays.stream(model.paths).mapToInt(w -> w.phases).max().orElse(1);
        path = new ShortestPath(horizon, most);
        price = new double[most][horizon];
        firstShare = new double[model.works][horizon];
        halves();
        pointUse = new int[Math.max(1, model.points) * horizon];
        openBits = new int[horizon];
        allMayEnd = new boolean[horizon + 1];
        Arrays.fill(allMayEnd, true);
        last = new int[horizon + 1];
        mayEnd = new boolean[horizon + 1];
        opening = new OpeningPrices(model.problem);
        fixed = new byte[2 * horizon];
        noGain = new HaulOut.Gains(horizon);
        built = new Schedule(2 * horizon, model.works);
        sharing = new SharedSetUps(model, this);
    }

    /** Before it is known who shares a set-up, each work pays half of it. */
    void halves() {
        for (int j = 0; j < model.works; j++) {
            int g = model.paths[j].servicePoint;
            Arrays.fill(firstShare[j], g < 0 ? 0 : 0.5 * model.setUp[g]);
        }
    }

    /** Before it is known who shares a set-up, each work pays what the relaxation has it pay. */
    void shares(Relaxation relaxation, double[] prices) {
        for (int j = 0; j < model.works; j++) {
            for (int t = 0; t < horizon; t++) {
                firstShare[j][t] = relaxation.setUpPrice(prices, j, t);
            }
        }
    }

    /** Builds on the visits given, opening others at their price where that is cheaper or needed. */
    double construct(boolean[] visits) {
        if (place(visits, true)) {
            for (int t = 0; t < horizon; t++) {
                visits[t] = (openBits[t] & 1) != 0;
                visits[horizon + t] = (openBits[t] & 2) != 0;
            }
            return build(visits);
        }
        built.cost = NONE;
        return NONE;
    }

    /** Builds on the visits given and no others. Infinite if some work cannot be placed. */
    double build(boolean[] visits) {
        built.cost = place(visits, false) ? price() : NONE;
        return built.cost;
    }

    /** Betters what was built last on the same visits by opening and closing set-ups. */
    double settleSetUps() {
        sharing.settle();
        built.cost = price();
        return built.cost;
    }

    /** Whether some place is visited in the month. */
    boolean visited(int month) {
        return openBits[month] != 0;
    }

    /** Places a work anew among the others, on the visits open; false if it cannot be. */
    boolean replace(int j) {
        use(j, -1);
        boolean placed = placeWork(j, false, false);
        use(j, 1);
        return placed;
    }

    /** Gives a work the doings it had. */
    void restore(int j, int[] months, int[] phases) {
        use(j, -1);
        built.months[j] = months;
        built.phases[j] = phases;
        use(j, 1);
    }

    /** What a work costs on the visits open, set-ups left out. */
    double workCost(int j) {
        WorkPaths w = model.paths[j];
        double sum = pathCost(j);
        for (int i = 0; i < built.months[j].length; i++) {
            int k = built.phases[j][i];
            int t = built.months[j][i];
            sum += (w.fit[k][t] & openBits[t]) == 1 ? w.afloatExtra[k] : 0;
        }
        return sum;
    }

    /** Whether every work, by itself, has a path on the visits given. */
    boolean eachHasAPath(boolean[] visits) {
        for (int t = 0; t < horizon; t++) {
            openBits[t] = (visits[t] ? 1 : 0) | (visits[horizon + t] ? 2 : 0);
        }
        for (int j = 0; j < model.works; j++) {
            WorkPaths w = model.paths[j];
            for (int k = 0; k < w.phases; k++) {
                fillPrice(j, k, true, false);
            }
            if (!(path.solve(w, w.last, allMayEnd, price) < NONE)) {
                return false;
            }
        }
        return true;
    }

    private boolean place(boolean[] visits, boolean mayOpen) {
        Arrays.fill(pointUse, 0);
        for (int t = 0; t < horizon; t++) {
            openBits[t] = (visits[t] ? 1 : 0) | (visits[horizon + t] ? 2 : 0);
        }
        for (VisitSlot s : model.problem.demands().forced()) {
            if (s.month() < horizon) {
                openBits[s.month()] |= WorkPaths.bit(s.place());
            }
        }
        for (int round = 0; round < ROUNDS; round++) {
            boolean moved = false;
            for (int j : model.order) {
                int[] before = built.months[j];
                if (round > 0) {
                    use(j, -1);
                }
                if (!placeWork(j, round == 0, mayOpen)) {
                    return false;
                }
                use(j, 1);
                moved |= !Arrays.equals(before, built.months[j]);
            }
            if (round > 0 && !moved) {
                break;
            }
        }
        return true;
    }

    private void use(int j, int change) {
        int g = model.paths[j].servicePoint;
        if (g >= 0) {
            for (int t : built.months[j]) {
                pointUse[g * horizon + t] += change;
            }
        }
    }

    private boolean placeWork(int j, boolean firstRound, boolean mayOpen) {
        WorkPaths w = model.paths[j];
        for (int k = 0; k < w.phases; k++) {
            fillPrice(j, k, firstRound, mayOpen);
        }
        if (!model.asTrigger.get(j).isEmpty()) {
            addFollowers(j, firstRound, mayOpen);
        }
        int[] limit = w.last;
        boolean[] end = allMayEnd;
        if (w.dueAtFirstVisit || !model.asFollower.get(j).isEmpty()) {
            narrow(j, w);
            limit = last;
            end = mayEnd;
        }
        if (!(path.solve(w, limit, end, price) < NONE)) {
            return false;
        }
        built.months[j] = Arrays.copyOf(path.months, path.length);
        built.phases[j] = Arrays.copyOf(path.phases, path.length);
        if (mayOpen) {
            openFor(w);
        }
        return true;
    }

    private void fillPrice(int j, int k, boolean firstRound, boolean mayOpen) {
        WorkPaths w = model.paths[j];
        int g = w.servicePoint;
        for (int t = 0; t < horizon; t++) {
            int fit = w.fit[k][t];
            int held = fit & openBits[t];
            double p = held != 0
                    ? held == 1 ? w.afloatExtra[k] : 0
                    : mayOpen && fit != 0 ? opening.cheapest(fit, t) : NONE;
            int used = g < 0 ? 1 : pointUse[g * horizon + t];
            if (used == 0) {
                p += firstRound ? firstShare[j][t] : model.setUp[g];
            } else if (used < 0) {
                p = NONE;
            }
            price[k][t] = p;
        }
    }

    private void openFor(WorkPaths w) {
        for (int i = 0; i < path.length; i++) {
            int t = path.months[i];
            int fit = w.fit[path.phases[i]][t];
            if ((fit & openBits[t]) == 0) {
                openBits[t] |= opening.slot(fit, t) < horizon ? 1 : 2;
            }
        }
    }

    /** A trigger pays for a follower that is not there yet, and keeps off months whose follower cannot be placed. */
    private void addFollowers(int j, boolean firstRound, boolean mayOpen) {
        for (FollowOn f : model.asTrigger.get(j)) {
            WorkPaths follower = model.paths[f.follower()];
            for (int t = 0; t < horizon && model.asks(f, t); t++) {
                int a = t + f.minLagMonths();
                int b = model.lastFollowing(f, t);
                double extra = NONE;
                if (!firstRound && built.done(f.follower(), a, b)) {
                    extra = 0;
                }
                for (int u = a; u <= b && extra > 0; u++) {
                    int fit = follower.fit[follower.firstPhase][u];
                    if ((fit & openBits[u]) != 0) {
                        extra = Math.min(extra, follower.step[follower.firstPhase][0][u] < NONE ? 1 : 2);
                    } else if (mayOpen && fit != 0) {
                        extra = Math.min(extra, opening.cheapest(fit, u));
                    }
                }
                for (int k = 0; k < price.length; k++) {
                    if (f.calledBy(k)) {
                        price[k][t] += extra;
                    }
                }
            }
        }
    }

    private void narrow(int j, WorkPaths w) {
        System.arraycopy(w.last, 0, last, 0, horizon + 1);
        Arrays.fill(mayEnd, true);
        if (w.dueAtFirstVisit) {
            int t = w.firstFitting(m -> openBits[m]);
            last[0] = Math.min(last[0], t);
            mayEnd[0] &= t >= horizon;
        }
        for (FollowOn f : model.asFollower.get(j)) {
            int[] months = built.months[f.trigger()];
            for (int i = 0; i < months.length; i++) {
                int t = months[i];
                if (f.calledBy(built.phases[f.trigger()][i]) && model.asks(f, t)) {
                    for (int m = 0; m <= t + f.minLagMonths(); m++) {
                        last[m] = Math.min(last[m], model.lastFollowing(f, t));
                        mayEnd[m] = false;
                    }
                }
            }
        }
    }

    /** Prices the placed works exactly, drops visits without work, and settles lifts. */
    private double price() {
        double sum = 0;
        Arrays.fill(fixed, HaulOut.FREE);
        for (VisitSlot s : model.problem.demands().forbidden()) {
            fix(s, HaulOut.CLOSED);
        }
        for (VisitSlot s : model.problem.demands().forced()) {
            fix(s, HaulOut.OPEN);
        }
        for (int j = 0; j < model.works; j++) {
            sum += pathCost(j);
            takeSlots(j, true);
        }
        for (int j = 0; j < model.works; j++) {
            takeSlots(j, false);
        }
        for (int j = 0; j < model.works; j++) {
            sum += afloatExtra(j);
        }
        for (int g = 0; g < model.points; g++) {
            for (int t = 0; t < horizon; t++) {
                sum += pointUse[g * horizon + t] > 0 ? model.setUp[g] : 0;
            }
        }
        double visits = model.haulOut.solve(noGain, fixed, built.open);
        if (!(visits < NONE)) {
            visits = model.anyNumber.solve(noGain, fixed, built.open);
            int held = 0;
            for (boolean o : built.open) {
                held += o ? 1 : 0;
            }
            int over = held - Math.min(held, model.problem.demands().maxVisits());
            visits += over > 0 ? over * PER_VISIT_TOO_MANY : NONE;
        }
        return firstVisitsKept() ? sum + visits : NONE;
    }

    private void fix(VisitSlot s, byte state) {
        if (s.month() < horizon) {
            fixed[s.place().ordinal() * horizon + s.month()] = state;
        }
    }

    private double pathCost(int j) {
        WorkPaths w = model.paths[j];
        int from = 0;
        int phase = w.firstPhase;
        double sum = 0;
        for (int t : built.months[j]) {
            sum += w.step[phase][from][t];
            from = t + 1;
            phase = w.next(phase);
        }
        return sum + w.end[phase][from];
    }

    /** What the doings cost more because no visit ashore is taken up in their month. */
    private double afloatExtra(int j) {
        WorkPaths w = model.paths[j];
        double sum = 0;
        for (int i = 0; i < built.months[j].length; i++) {
            int k = built.phases[j][i];
            int slot = horizon + built.months[j][i];
            boolean ashore = (w.fit[k][slot - horizon] & 2) != 0 && fixed[slot] == HaulOut.OPEN;
            sum += ashore ? 0 : w.afloatExtra[k];
        }
        return sum;
    }

    /** Works that fit one open place only take it; the others join a visit held anyway, else the cheaper. */
    private void takeSlots(int j, boolean only) {
        WorkPaths w = model.paths[j];
        for (int i = 0; i < built.months[j].length; i++) {
            int t = built.months[j][i];
            int bits = w.fit[built.phases[j][i]][t] & openBits[t];
            if (bits != 3 && only) {
                fixed[bits == 1 ? t : horizon + t] = HaulOut.OPEN;
            } else if (bits == 3 && !only && fixed[t] != HaulOut.OPEN && fixed[horizon + t] != HaulOut.OPEN) {
                fixed[opening.slot(3, t)] = HaulOut.OPEN;
            }
        }
    }

    private boolean firstVisitsKept() {
        for (int j = 0; j < model.works; j++) {
            WorkPaths w = model.paths[j];
            if (w.dueAtFirstVisit) {
                int done = built.months[j].length == 0 ? horizon : built.months[j][0];
                int held = w.firstFitting(t -> (built.open[t] ? 1 : 0) | (built.open[horizon + t] ? 2 : 0));
                if (held < done) {
                    return false;
                }
            }
        }
        return true;
    }
}

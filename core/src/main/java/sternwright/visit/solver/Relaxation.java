package sternwright.visit.solver;

import java.util.Arrays;
import sternwright.visit.problem.FollowOn;

/**
 * The problem with its links priced: every work on its own, visits and lifts, each set-up alone. Links: a work done in a month
 * asks for its visit and its set-up; a work done ashore within a few months (fewer than lie between two doings) asks for one
 * stay ashore in them; a trigger asks for its follower; a visit that fits a work of unknown history asks for its first doing by then.
 */
final class Relaxation {
    private static final double NONE = WorkPaths.NONE;
    private static final int LONGEST_STAY = 6;

    private final PathModel model;
    private final Scope scope;
    private final ShortestPath path;
    private final int horizon;
    private final int slots;
    private final LinkNumbers links;
    private final FirstVisits firsts;

    /** How many prices there are. */
    final int size;

    /** Numbers of the links that can bind in the scope. */
    final int[] alive;

    /** How many of them. */
    int aliveCount;

    /** How often each link is asked for beyond what is held, in the last answer. */
    final double[] excess;

    /** Whether each slot (0 to 2T-1), then each set-up (2T + point x T + month), is held in the last answer. */
    final double[] held;

    private final int[] stayMonths;
    private final int[] asks;
    private final HaulOut.Gains gain;
    private final double[] asked;
    private final boolean[] open;
    private final int[] starts;
    private final double[][][] nodePrice;
    private final double[][] anyPlace;

    /** Prices on phases that ask for a follower, by work, phase and month; none for works of which every phase does. */
    private final double[][][] calling;

    private final double[][] ashoreOnly;

    private final int[][] doneMonths;
    private final int[][] donePhases;

    Relaxation(PathModel model, Scope scope) {
        this.model = model;
        this.scope = scope;
        horizon = model.horizon;
        slots = 2 * horizon;
        links = new LinkNumbers(model);
        firsts = new FirstVisits(model, scope, links.end);
        size = firsts.end();
        int most = Arrays.stream(model.paths).mapToInt(w -> w.phases).max().orElse(1);
        path = new ShortestPath(horizon, most);
        alive = new int[size];
        asks = new int[size];
        excess = new double[size];
        held = new double[slots + model.points * horizon];
        gain = new HaulOut.Gains(horizon);
        asked = new double[model.points * horizon];
        open = new boolean[slots];
        starts = new int[horizon + 1];
        anyPlace = new double[model.works][horizon];
        calling = new double[model.works][0][];
        for (FollowOn f : model.followOns) {
            if (!f.always()) {
                calling[f.trigger()] = new double[model.paths[f.trigger()].phases][horizon];
            }
        }
        ashoreOnly = new double[model.works][horizon];
        nodePrice = new double[model.works][][];
        stayMonths = new int[model.works];
        doneMonths = new int[model.works][0];
        donePhases = new int[model.works][0];
        for (int j = 0; j < model.works; j++) {
            nodePrice[j] = new double[model.paths[j].phases][horizon];
            stayMonths[j] = Math.min(LONGEST_STAY, model.paths[j].fewestBetween());
        }
    }

    /** Last month of the stay that begins in the month, for a work. */
    private int stayEnd(int work, int month) {
        return Math.min(month + stayMonths[work] - 1, model.haulOut.gapLast[month]);
    }

    /** Lists the links that can bind; call after the scope has changed. */
    void refresh() {
        aliveCount = 0;
        for (int j = 0; j < model.works; j++) {
            boolean[] ashore = new boolean[horizon];
            for (int t = 0; t < horizon; t++) {
                int bits = bits(j, t);
                ashore[t] = (bits & 2) != 0;
                addAlive(j, t, bits);
            }
            addStays(j, ashore);
        }
        for (int i = 0; i < model.followOns.length; i++) {
            for (int t = 0; t < horizon && model.asks(model.followOns[i], t); t++) {
                alive[aliveCount++] = links.follow(i, t);
            }
        }
        aliveCount = firsts.addAlive(alive, aliveCount, asks);
    }

    private int bits(int j, int t) {
        int bits = 0;
        for (byte[] row : scope.fit[j]) {
            bits |= row[t];
        }
        return bits;
    }

    private void addAlive(int j, int t, int bits) {
        if ((bits & 1) != 0) {
            asks[links.place(j, t)] = t;
            alive[aliveCount++] = links.place(j, t);
        }
        if ((bits & 2) != 0) {
            asks[links.place(j, t) + 1] = horizon + t;
            alive[aliveCount++] = links.place(j, t) + 1;
        }
        int g = model.paths[j].servicePoint;
        if (bits != 0 && g >= 0) {
            asks[links.setUp(j, t)] = slots + g * horizon + t;
            alive[aliveCount++] = links.setUp(j, t);
        }
    }

    private void addStays(int j, boolean[] ashore) {
        for (int t = 0; t < horizon; t++) {
            if (model.haulOut.gapFirst[t] >= 0 && stayMonths[j] > 1) {
                int n = 0;
                for (int u = t; u <= stayEnd(j, t); u++) {
                    n += ashore[u] ? 1 : 0;
                }
                if (n > 1) {
                    alive[aliveCount++] = links.stay(j, t);
                }
            }
        }
    }

    /** Value at the prices given; infinite if some work has no path or the visits do not fit. */
    double evaluate(double[] prices) {
        spread(prices);
        double value = 0;
        for (int j = 0; j < model.works; j++) {
            double cost = path.solve(model.paths[j], scope.last[j], scope.mayEnd[j], nodePrice[j], firsts.price(j));
            if (!(cost < NONE)) {
                return NONE;
            }
            value += cost;
            markUsed(j, prices);
        }
        double visits = model.haulOut.solve(gain, scope.visit, open);
        for (int s = 0; s < slots; s++) {
            held[s] = open[s] ? 1 : 0;
        }
        value += visits + setUps();
        takeHeld();
        return value;
    }

    private double setUps() {
        double value = 0;
        for (int i = 0; i < asked.length; i++) {
            double net = model.setUp[i / horizon] - asked[i];
            boolean on = scope.setUp[i] == HaulOut.OPEN || net < 0 && scope.setUp[i] != HaulOut.CLOSED;
            held[slots + i] = on ? 1 : 0;
            value += on ? net : 0;
        }
        return value;
    }

    private void takeHeld() {
        for (int t = 0; t < horizon; t++) {
            starts[t + 1] = starts[t] + (model.haulOut.starts(t) ? 1 : 0);
        }
        for (int a = 0; a < aliveCount; a++) {
            int m = alive[a];
            if (m < links.stays) {
                excess[m] -= held[asks[m]];
            } else if (m >= firsts.begin()) {
                excess[m] = held[asks[m]] - (firsts.doneBy(m, asks[m], doneMonths) ? 1 : 0);
            } else if (m < links.follows) {
                int j = (m - links.stays) / horizon;
                int t = (m - links.stays) % horizon;
                int began = starts[stayEnd(j, t) + 1] - starts[t + 1];
                excess[m] -= (model.haulOut.ashore(t) ? 1 : 0) + began;
            }
        }
    }

    /** Spreads the prices over nodes, visits, stays and set-ups. */
    private void spread(double[] prices) {
        gain.clear();
        Arrays.fill(asked, 0);
        for (int j = 0; j < model.works; j++) {
            Arrays.fill(anyPlace[j], 0);
            for (double[] row : calling[j]) {
                Arrays.fill(row, 0);
            }
            Arrays.fill(ashoreOnly[j], 0);
        }
        firsts.clear();
        for (int a = 0; a < aliveCount; a++) {
            int m = alive[a];
            excess[m] = 0;
            double p = prices[m];
            if (p > 0) {
                spread(m, p);
            }
        }
        for (int t = 1; t < horizon; t++) {
            gain.start[t] += gain.start[t - 1];
        }
        firsts.sum();
        for (int j = 0; j < model.works; j++) {
            for (int k = 0; k < nodePrice[j].length; k++) {
                fillNode(j, k, scope.fit[j][k], prices);
            }
        }
    }

    private void spread(int m, double p) {
        if (m < links.setUps) {
            gain.visit[asks[m]] += p;
        } else if (m < links.stays) {
            asked[asks[m] - slots] += p;
            anyPlace[(m - links.setUps) / horizon][(m - links.setUps) % horizon] += p;
        } else if (m < links.follows) {
            int j = (m - links.stays) / horizon;
            int t = (m - links.stays) % horizon;
            int end = stayEnd(j, t);
            gain.ashore[t] += p;
            for (int u = t; u <= end; u++) {
                ashoreOnly[j][u] += p;
            }
            addStart(t + 1, end, p);
        } else if (m >= firsts.begin()) {
            gain.visit[asks[m]] -= p;
            firsts.spread(m, asks[m], p);
        } else {
            FollowOn f = model.followOns[(m - links.follows) / horizon];
            int t = (m - links.follows) % horizon;
            if (f.always()) {
                anyPlace[f.trigger()][t] += p;
            } else {
                f.phases().forEach(k -> calling[f.trigger()][k][t] += p);
            }
            for (int u = t + f.minLagMonths(); u <= model.lastFollowing(f, t); u++) {
                anyPlace[f.follower()][u] -= p;
            }
        }
    }

    /** Notes a gain for coming ashore in a span as a difference, summed up once all are noted. */
    private void addStart(int first, int end, double p) {
        if (first <= end) {
            gain.start[first] += p;
            if (end + 1 < horizon) {
                gain.start[end + 1] -= p;
            }
        }
    }

    private void fillNode(int j, int k, byte[] fit, double[] prices) {
        double[] node = nodePrice[j][k];
        double extra = model.paths[j].afloatExtra[k];
        double[] any = anyPlace[j];
        double[] ashore = ashoreOnly[j];
        for (int t = 0; t < horizon; t++) {
            int m = links.place(j, t);
            node[t] = switch (fit[t]) {
                case 1 -> any[t] + extra + prices[m];
                case 2 -> any[t] + ashore[t] + prices[m + 1];
                case 3 -> any[t] + Math.min(extra + prices[m], ashore[t] + prices[m + 1]);
                default -> NONE;
            };
            if (calling[j].length > 0) {
                node[t] += calling[j][k][t];
            }
        }
    }

    private void markUsed(int j, double[] prices) {
        doneMonths[j] = Arrays.copyOf(path.months, path.length);
        donePhases[j] = Arrays.copyOf(path.phases, path.length);
        for (int i = 0; i < path.length; i++) {
            int t = path.months[i];
            byte bits = scope.fit[j][path.phases[i]][t];
            int m = links.place(j, t);
            double extra = model.paths[j].afloatExtra[path.phases[i]];
            boolean ashore = bits == 2 || bits == 3 && ashoreOnly[j][t] + prices[m + 1] < extra + prices[m];
            excess[ashore ? m + 1 : m] += 1;
            if (model.paths[j].servicePoint >= 0) {
                excess[links.setUp(j, t)] += 1;
            }
            int gap = model.haulOut.gapFirst[t];
            for (int u = t; ashore && gap >= 0 && u >= Math.max(gap, t - stayMonths[j] + 1); u--) {
                excess[links.stay(j, u)] += 1;
            }
        }
        for (int i = 0; i < model.followOns.length; i++) {
            FollowOn f = model.followOns[i];
            if (f.trigger() == j || f.follower() == j) {
                markFollowOn(i, f, j);
            }
        }
    }

    private void markFollowOn(int i, FollowOn f, int j) {
        for (int n = 0; n < path.length; n++) {
            int t = path.months[n];
            if (f.trigger() == j && f.calledBy(path.phases[n]) && model.asks(f, t)) {
                excess[links.follow(i, t)] += 1;
            }
            for (int u = 0; f.follower() == j && u <= t - f.minLagMonths(); u++) {
                if (model.asks(f, u) && t <= model.lastFollowing(f, u)) {
                    excess[links.follow(i, u)] -= 1;
                }
            }
        }
    }

    /** What a work pays for its set-up in a month at the prices given. */
    double setUpPrice(double[] prices, int work, int month) {
        return model.paths[work].servicePoint < 0 ? 0 : prices[links.setUp(work, month)];
    }

    /** Whether the work is done in the month in the last answer. */
    boolean done(int work, int month) {
        return Arrays.stream(doneMonths[work]).anyMatch(t -> t == month);
    }

    /** Fills a schedule with the last answer; its cost is left to the caller. */
    void fill(Schedule schedule) {
        System.arraycopy(open, 0, schedule.open, 0, slots);
        System.arraycopy(doneMonths, 0, schedule.months, 0, model.works);
        System.arraycopy(donePhases, 0, schedule.phases, 0, model.works);
    }

    /** At the prices given, strikes out steps, visits and set-ups that no plan cheaper than the limit can use. */
    void strike(double[] prices, double limit) {
        double bound = evaluate(prices);
        if (!(bound < NONE)) {
            return;
        }
        double room = limit - bound;
        for (int j = 0; j < model.works; j++) {
            double cost = path.solve(model.paths[j], scope.last[j], scope.mayEnd[j], nodePrice[j], firsts.price(j));
            boolean[] left = path.strike(
                    model.paths[j], scope.last[j], scope.mayEnd[j], nodePrice[j], firsts.price(j), cost + room);
            for (byte[] row : model.paths[j].fit) {
                for (int t = 0; t < horizon; t++) {
                    row[t] = left[t] ? row[t] : 0;
                }
            }
        }
        double[] ifHeld = new double[slots];
        double[] ifNot = new double[slots];
        double visits = model.haulOut.solve(gain, scope.visit, open);
        model.haulOut.marginals(gain, scope.visit, ifHeld, ifNot);
        for (int s = 0; s < slots; s++) {
            if (ifHeld[s] - visits > room) {
                scope.settleVisit(s, HaulOut.CLOSED);
            } else if (ifNot[s] - visits > room) {
                scope.settleVisit(s, HaulOut.OPEN);
            }
        }
        for (int i = 0; i < asked.length; i++) {
            double net = model.setUp[i / horizon] - asked[i];
            if (Math.abs(net) > room) {
                scope.settleSetUp(i, net > 0 ? HaulOut.CLOSED : HaulOut.OPEN);
            }
        }
    }
}

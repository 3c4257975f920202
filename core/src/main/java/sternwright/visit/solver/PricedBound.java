package sternwright.visit.solver;

import java.util.Arrays;
import sternwright.visit.problem.FollowOn;

/**
 * The bound with priced links (Lagrangian relaxation), improved step by step by the volume algorithm. Each step solves every
 * work on its own, the visits and lifts, and the set-ups; the averages of their answers tell how undecided each visit is.
 */
final class PricedBound {
    private static final double NONE = WorkPaths.NONE;

    private final PathModel model;
    private final Scope scope;
    private final LinkPrices links;
    private final ShortestPath path;
    private final int horizon;
    private final int slots;

    /** Prices of the best bound. */
    final double[] best;

    private final double[] price;
    private final double[] slack;
    private final double[] used;
    private final int[] asks;
    private final int[] alive;
    private int aliveCount;
    private final double[] gain;
    private final double[] asked;
    private final boolean[] open;
    /** Average of each slot (0 to 2T-1), then each set-up (2T + point x T + month): 0 never to 1 always. */
    final double[] average;

    private final double[] held;
    private final double[][][] nodePrice;
    private final double[][] monthPrice;
    private final int[][] doneMonths;
    private final int[][] donePhases;
    private double stepSize = 1.0;

    PricedBound(PathModel model, Scope scope) {
        this.model = model;
        this.scope = scope;
        horizon = model.horizon;
        slots = 2 * horizon;
        links = new LinkPrices(model);
        int most = Arrays.stream(model.paths).mapToInt(w -> w.phases).max().orElse(1);
        path = new ShortestPath(horizon, most);
        best = new double[links.size];
        price = new double[links.size];
        slack = new double[links.size];
        used = new double[links.size];
        asks = new int[links.size];
        alive = new int[links.size];
        gain = new double[slots];
        asked = new double[model.points * horizon];
        open = new boolean[slots];
        average = new double[slots + model.points * horizon];
        held = new double[average.length];
        monthPrice = new double[model.works][horizon];
        doneMonths = new int[model.works][0];
        donePhases = new int[model.works][0];
        nodePrice = new double[model.works][][];
        for (int j = 0; j < model.works; j++) {
            nodePrice[j] = new double[model.paths[j].phases][horizon];
        }
    }

    /** Lists the links that can bind in the scope; call after the scope has changed. */
    void refresh() {
        aliveCount = 0;
        for (int j = 0; j < model.works; j++) {
            for (int t = 0; t < horizon; t++) {
                int bits = 0;
                for (byte[] row : scope.fit[j]) {
                    bits |= row[t];
                }
                addAlive(j, t, bits);
            }
        }
        for (int i = 0; i < model.followOns.length; i++) {
            for (int t = 0; t < horizon && model.asks(model.followOns[i], t); t++) {
                asks[links.follow(i, t)] = -1;
                alive[aliveCount++] = links.follow(i, t);
            }
        }
    }

    private void addAlive(int j, int t, int bits) {
        if ((bits & 1) != 0) {
            asks[links.afloat(j, t)] = t;
            alive[aliveCount++] = links.afloat(j, t);
        }
        if ((bits & 2) != 0) {
            asks[links.ashore(j, t)] = horizon + t;
            alive[aliveCount++] = links.ashore(j, t);
        }
        int g = model.paths[j].servicePoint;
        if (bits != 0 && g >= 0) {
            asks[links.setUp(j, t)] = slots + g * horizon + t;
            alive[aliveCount++] = links.setUp(j, t);
        }
    }

    /** Improves the bound from the best prices so far, until it reaches the target, stalls or has made its steps. */
    double improve(int steps, double target, Stop stop) {
        double bound = evaluate(best);
        if (!(bound < NONE)) {
            return bound;
        }
        takeAverage(1);
        double weight = 0.1;
        int stale = 0;
        double mark = bound;
        for (int i = 1; i <= steps && bound < target && !stop.now(); i++) {
            step(bound, Math.max(target, bound + 1));
            double value = evaluate(price);
            takeAverage(weight);
            if (value > bound) {
                stepSize = Math.min(1.8, stepSize * 1.1);
                bound = value;
                System.arraycopy(price, 0, best, 0, best.length);
                stale = 0;
            } else if (++stale >= 8) {
                stepSize = Math.max(0.002, stepSize * 0.7);
                stale = 0;
            }
            if (i % 40 == 0) {
                weight = Math.max(0.02, weight * 0.85);
                if (bound - mark < 1e-5 * Math.abs(target)) {
                    break;
                }
                mark = bound;
            }
        }
        return bound;
    }

    /** Starts the step size anew. */
    void restart(double size) {
        stepSize = size;
    }

    private void step(double bound, double target) {
        double norm = 0;
        for (int a = 0; a < aliveCount; a++) {
            int m = alive[a];
            double s = slack[m];
            if (s > 0 || best[m] > 0) {
                norm += s * s;
            }
        }
        double length = stepSize * (target - bound) / Math.max(norm, 1e-9);
        for (int a = 0; a < aliveCount; a++) {
            int m = alive[a];
            price[m] = Math.max(0, best[m] + length * slack[m]);
        }
    }

    private void takeAverage(double weight) {
        for (int v = 0; v < average.length; v++) {
            average[v] += weight * (held[v] - average[v]);
        }
        for (int a = 0; a < aliveCount; a++) {
            int m = alive[a];
            double s = used[m] - (asks[m] < 0 ? 0 : held[asks[m]]);
            slack[m] += weight * (s - slack[m]);
        }
    }

    /** Value of the relaxation at the prices given; infinite if some work has no path or the visits do not fit. */
    double evaluate(double[] prices) {
        double value = priced(prices);
        for (int j = 0; j < model.works; j++) {
            double cost = path.solve(model.paths[j], scope.last[j], scope.mayEnd[j], nodePrice[j]);
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
        return value + visits + setUps();
    }

    private double setUps() {
        double value = 0;
        for (int g = 0; g < model.points; g++) {
            for (int t = 0; t < horizon; t++) {
                int i = g * horizon + t;
                double net = model.setUp[g] - asked[i];
                boolean on = scope.setUp[i] == HaulOut.OPEN || net < 0 && scope.setUp[i] != HaulOut.CLOSED;
                held[slots + i] = on ? 1 : 0;
                value += on ? net : 0;
            }
        }
        return value;
    }

    /** Spreads the prices over nodes, slots and set-ups. */
    private double priced(double[] prices) {
        Arrays.fill(gain, 0);
        Arrays.fill(asked, 0);
        for (int a = 0; a < aliveCount; a++) {
            int m = alive[a];
            used[m] = 0;
            int v = asks[m];
            if (v >= slots) {
                asked[v - slots] += prices[m];
            } else if (v >= 0) {
                gain[v] += prices[m];
            }
        }
        for (int j = 0; j < model.works; j++) {
            double[] months = monthPrice[j];
            for (int t = 0; t < horizon; t++) {
                months[t] = model.paths[j].servicePoint >= 0 ? prices[links.setUp(j, t)] : 0;
            }
        }
        links.addFollowOns(prices, monthPrice);
        for (int j = 0; j < model.works; j++) {
            for (int k = 0; k < nodePrice[j].length; k++) {
                fillNode(j, scope.fit[j][k], nodePrice[j][k], prices);
            }
        }
        return 0;
    }

    private void fillNode(int j, byte[] fit, double[] node, double[] prices) {
        double[] months = monthPrice[j];
        for (int t = 0; t < horizon; t++) {
            int m = links.afloat(j, t);
            node[t] = switch (fit[t]) {
                case 1 -> months[t] + prices[m];
                case 2 -> months[t] + prices[m + 1];
                case 3 -> months[t] + Math.min(prices[m], prices[m + 1]);
                default -> NONE;
            };
        }
    }

    private void markUsed(int j, double[] prices) {
        doneMonths[j] = Arrays.copyOf(path.months, path.length);
        donePhases[j] = Arrays.copyOf(path.phases, path.length);
        for (int i = 0; i < path.length; i++) {
            int t = path.months[i];
            byte bits = scope.fit[j][path.phases[i]][t];
            int m = links.afloat(j, t);
            boolean ashore = bits == 2 || bits == 3 && prices[m + 1] < prices[m];
            used[ashore ? m + 1 : m] = 1;
            if (model.paths[j].servicePoint >= 0) {
                used[links.setUp(j, t)] = 1;
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
            if (f.trigger() == j && model.asks(f, t)) {
                used[links.follow(i, t)] += 1;
            }
            for (int u = t - f.maxLagMonths(); f.follower() == j && u <= t - f.minLagMonths(); u++) {
                if (u >= 0 && model.asks(f, u)) {
                    used[links.follow(i, u)] -= 1;
                }
            }
        }
    }

    /** Fills a schedule with the answers of the last evaluation; its cost is left to the caller. */
    void fill(Schedule schedule) {
        System.arraycopy(open, 0, schedule.open, 0, slots);
        System.arraycopy(doneMonths, 0, schedule.months, 0, model.works);
        System.arraycopy(donePhases, 0, schedule.phases, 0, model.works);
    }

    /** How much of the averages is a doing of the work in the month: 0 to 1. */
    double averageDone(int j, int t) {
        double sum = 0;
        int bits = 0;
        for (byte[] row : scope.fit[j]) {
            bits |= row[t];
        }
        if ((bits & 1) != 0) {
            sum += slack[links.afloat(j, t)] + average[t];
        }
        if ((bits & 2) != 0) {
            sum += slack[links.ashore(j, t)] + average[horizon + t];
        }
        return sum;
    }

    /** Strikes out steps, visits and set-ups that no plan cheaper than the limit can use. */
    void strike(double limit) {
        double bound = evaluate(best);
        if (!(bound < NONE)) {
            return;
        }
        double room = limit - bound;
        for (int j = 0; j < model.works; j++) {
            double cost = path.solve(model.paths[j], scope.last[j], scope.mayEnd[j], nodePrice[j]);
            boolean[] left = path.strike(model.paths[j], scope.last[j], scope.mayEnd[j], nodePrice[j], cost + room);
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

    /** Asked now and then whether to stop. */
    interface Stop {
        /** Whether to stop. */
        boolean now();
    }
}

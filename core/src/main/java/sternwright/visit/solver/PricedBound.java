package sternwright.visit.solver;

import java.util.Arrays;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * Improves the bound of the {@link Relaxation} step by step by the volume algorithm. The averages of its answers tell how
 * undecided each visit, set-up and doing is.
 */
final class PricedBound {
    private static final double NONE = WorkPaths.NONE;
    private static final int STALE = 8;

    final Relaxation relaxation;
    /** Prices of the best bound. */
    final double[] best;

    /** Average of each slot (0 to 2T-1), then each set-up (2T + point x T + month): 0 never to 1 always. */
    final double[] average;

    private final double[] price;
    private final double[] slack;
    private final int horizon;
    private final double[] averageDone;
    private final int[] linked;
    private double stepSize = 1.0;

    PricedBound(PathModel model, Scope scope) {
        relaxation = new Relaxation(model, scope);
        horizon = model.horizon;
        best = new double[relaxation.size];
        price = new double[relaxation.size];
        slack = new double[relaxation.size];
        average = new double[relaxation.held.length];
        averageDone = new double[model.works * horizon];
        linked = Arrays.stream(model.followOns)
                .flatMapToInt(f -> IntStream.of(f.trigger(), f.follower()))
                .distinct()
                .toArray();
    }

    /** Improves the bound from the best prices so far, until it reaches the target, stalls or has made its steps. */
    double improve(int steps, double target, BooleanSupplier stop) {
        double bound = relaxation.evaluate(best);
        if (!(bound < NONE)) {
            return bound;
        }
        takeAverage(1);
        double weight = 0.1;
        int stale = 0;
        for (int i = 1; i <= steps && bound < target && !stop.getAsBoolean(); i++) {
            step(bound, target);
            double value = relaxation.evaluate(price);
            takeAverage(weight);
            if (value > bound) {
                stepSize = Math.min(1.8, stepSize * 1.1);
                bound = value;
                System.arraycopy(price, 0, best, 0, best.length);
                stale = 0;
            } else if (++stale >= STALE) {
                stepSize = Math.max(0.002, stepSize * 0.7);
                stale = 0;
            }
            if (i % 40 == 0) {
                weight = Math.max(0.02, weight * 0.85);
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
        for (int a = 0; a < relaxation.aliveCount; a++) {
            int m = relaxation.alive[a];
            double s = slack[m];
            if (s > 0 || best[m] > 0) {
                norm += s * s;
            }
        }
        double length = stepSize * (target - bound) / Math.max(norm, 1e-9);
        for (int a = 0; a < relaxation.aliveCount; a++) {
            int m = relaxation.alive[a];
            price[m] = Math.max(0, best[m] + length * slack[m]);
        }
    }

    private void takeAverage(double weight) {
        for (int v = 0; v < average.length; v++) {
            average[v] += weight * (relaxation.held[v] - average[v]);
        }
        for (int j : linked) {
            for (int t = 0; t < horizon; t++) {
                int i = j * horizon + t;
                averageDone[i] += weight * ((relaxation.done(j, t) ? 1 : 0) - averageDone[i]);
            }
        }
        for (int a = 0; a < relaxation.aliveCount; a++) {
            int m = relaxation.alive[a];
            slack[m] += weight * (relaxation.excess[m] - slack[m]);
        }
    }

    /** Average of the doings of a work with follow-on links in a month: 0 never to 1 always. */
    double averageDone(int work, int month) {
        return averageDone[work * horizon + month];
    }
}

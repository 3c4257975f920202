package sternwright.due.hours;

import java.util.concurrent.atomic.AtomicReferenceArray;
import org.apache.commons.numbers.gamma.RegularizedBeta;

/**
 * Years of use until a gamma process of unknown rate has passed a level: the 10, 50 and 90 % points.
 *
 * <p>The answer depends on two numbers alone, the level over the scale of the rate and the shape of the rate. So it is worked
 * out exactly on a grid of their logarithms, each point when it is first wanted, and read off between the points by cubics
 * (Lagrange, four points each way). Error against the exact answer: below one part in a thousand of the years, measured over
 * the whole grid and kept by a property test. Outside the grid the exact equation is solved.
 */
final class GammaQuantiles {
    private static final double FIRST_LEVEL = -9;
    private static final double LEVEL_STEP = 0.5;
    private static final int LEVELS = 33;
    private static final double FIRST_SHAPE = 0.7;
    private static final double SHAPE_STEP = 0.4;
    private static final int SHAPES = 16;

    /** The 90 % point of the standard normal distribution. */
    private static final double NORMAL_90 = 1.2815515655446004;

    private static final double[] TARGETS = {0.1, 0.5, 0.9};
    private static final double[] NORMALS = {-NORMAL_90, 0, NORMAL_90};
    private static final double NEAR = 1e-7;

    private final double shapePerYear;
    private final AtomicReferenceArray<double[]> grid = new AtomicReferenceArray<>(LEVELS * SHAPES);

    /** For processes that gain this shape in a year. */
    GammaQuantiles(double shapePerYear) {
        this.shapePerYear = shapePerYear;
    }

    /** Years by which the chance of having passed the level is 10, 50 and 90 %. */
    double[] years(double level, double shape) {
        double x = (Math.log(level) - FIRST_LEVEL) / LEVEL_STEP;
        double y = (Math.log(shape) - FIRST_SHAPE) / SHAPE_STEP;
        if (!(x >= 0 && x <= LEVELS - 1 && y >= 0 && y <= SHAPES - 1)) {
            return exact(level, shape);
        }
        int left = Math.max(0, Math.min(LEVELS - 4, (int) x - 1));
        int low = Math.max(0, Math.min(SHAPES - 4, (int) y - 1));
        double[] logs = new double[3];
        for (int j = 0; j < 4; j++) {
            double ofShape = cubic(y - low, j);
            for (int i = 0; i < 4; i++) {
                double weight = ofShape * cubic(x - left, i);
                double[] point = point(left + i, low + j);
                for (int k = 0; k < 3; k++) {
                    logs[k] += weight * point[k];
                }
            }
        }
        for (int k = 0; k < 3; k++) {
            logs[k] = Math.exp(logs[k]);
        }
        return logs;
    }

    /** Weight of the i-th of four points at 0, 1, 2, 3 in the cubic through them. */
    private static double cubic(double t, int i) {
        return switch (i) {
            case 0 -> -(t - 1) * (t - 2) * (t - 3) / 6;
            case 1 -> t * (t - 2) * (t - 3) / 2;
            case 2 -> -t * (t - 1) * (t - 3) / 2;
            default -> t * (t - 1) * (t - 2) / 6;
        };
    }

    /** Logarithms of the exact years at a point of the grid; two threads that meet here work out the same. */
    private double[] point(int level, int shape) {
        int at = shape * LEVELS + level;
        double[] known = grid.get(at);
        if (known != null) {
            return known;
        }
        double[] years = exact(Math.exp(FIRST_LEVEL + level * LEVEL_STEP), Math.exp(FIRST_SHAPE + shape * SHAPE_STEP));
        for (int k = 0; k < 3; k++) {
            years[k] = Math.log(years[k]);
        }
        grid.set(at, years);
        return years;
    }

    /** The exact equation, from the cube-root normal approximation of the F distribution (Paulson 1942, from memory). */
    double[] exact(double level, double shape) {
        double[] years = new double[3];
        double guess = level * (shape - 1) / shapePerYear;
        for (int k = 0; k < 3; k++) {
            years[k] = corrected(level, shape, k, approximate(level, shape, NORMALS[k], guess));
        }
        return years;
    }

    /** Steps by the slope of the approximation until the exact chance is met; bisection where they do not arrive. */
    private double corrected(double level, double shape, int k, double start) {
        double density = Math.exp(-NORMALS[k] * NORMALS[k] / 2) / Math.sqrt(2 * Math.PI);
        double years = start;
        for (int i = 0; i < 12; i++) {
            double off = TARGETS[k] - chance(level, shape, years);
            if (Math.abs(off) < NEAR) {
                return years;
            }
            double step = off / density / slope(level, shape, years);
            if (!(Math.abs(step) < 1)) {
                break;
            }
            years *= Math.exp(step);
        }
        return bisected(level, shape, TARGETS[k], start);
    }

    private double bisected(double level, double shape, double target, double start) {
        double low = start;
        double high = start;
        while (chance(level, shape, low) > target && low > 1e-12) {
            low /= 2;
        }
        while (chance(level, shape, high) < target && high < 1e9) {
            high *= 2;
        }
        while (high / low > 1 + NEAR) {
            double middle = Math.sqrt(low * high);
            if (chance(level, shape, middle) < target) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private double approximate(double level, double shape, double normal, double guess) {
        double logYears = Math.log(guess);
        for (int i = 0; i < 12; i++) {
            double years = Math.exp(logYears);
            double step = (normal - normalScore(level, shape, years)) / slope(level, shape, years);
            logYears += Math.max(-1, Math.min(1, step));
            if (Math.abs(step) < 1e-4) {
                break;
            }
        }
        return Math.exp(logYears);
    }

    /** Normal score of the chance, rising with the years. */
    private double normalScore(double level, double shape, double years) {
        double a = 2.0 / (9 * 2 * shapePerYear * years);
        double b = 2.0 / (9 * 2 * shape);
        double root = Math.cbrt(level * shape / (shapePerYear * years));
        return -((1 - b) * root - (1 - a)) / Math.sqrt(b * root * root + a);
    }

    private double slope(double level, double shape, double years) {
        double d = 1e-4;
        return (normalScore(level, shape, years * (1 + d)) - normalScore(level, shape, years)) / d;
    }

    /** The chance that the level, in units of the rate's scale, is passed within some years of use: 0 to 1. */
    double chance(double level, double shape, double years) {
        return RegularizedBeta.complement(level / (level + 1), shapePerYear * years, shape);
    }
}

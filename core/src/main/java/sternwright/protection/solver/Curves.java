package sternwright.protection.solver;

import java.util.List;
import sternwright.protection.circuit.Body;
import sternwright.protection.circuit.Reaction;

/** The polarisation curves of all bodies in flat arrays, made for fast evaluation. */
final class Curves {
    /**
     * Beyond this current density, A/m2, a Tafel line without a limit is continued as a straight line: far above anything in water, and low
     * enough that a trial from a bad start leaves the matrix within the reach of double precision.
     */
    private static final double STRAIGHT_ABOVE = Math.log(1e8);

    /** A line with a limit stands at its limit long before this exponent. */
    private static final double SATURATED_ABOVE = 300;

    /** Least conductance of a wet body in the matrix, S per m2: keeps the matrix regular where all reactions sit at their limits. */
    private static final double FLOOR_S_PER_M2 = 1e-12;

    private final int[] start;
    private final double[] rate;
    private final double[] logDensity;
    private final double[] limit;
    private final double[] perLimit;
    private final double[] most;
    private final double[] area;

    Curves(List<Body> bodies) {
        int n = bodies.size();
        start = new int[n + 1];
        area = new double[n];
        for (int b = 0; b < n; b++) {
            start[b + 1] =
                    start[b] + (bodies.get(b).wet() ? bodies.get(b).reactions().size() : 0);
            area[b] = bodies.get(b).bareAreaM2();
        }
        rate = new double[start[n]];
        logDensity = new double[start[n]];
        limit = new double[start[n]];
        perLimit = new double[start[n]];
        most = new double[start[n]];
        for (int b = 0; b < n; b++) {
            for (int r = start[b]; r < start[b + 1]; r++) {
                Reaction reaction = bodies.get(b).reactions().get(r - start[b]);
                rate[r] = reaction.sign() * Math.log(10) / reaction.slopeVPerDecade();
                logDensity[r] = Math.log(reaction.i0APerM2()) - rate[r] * reaction.e0V();
                limit[r] = reaction.limitAPerM2();
                perLimit[r] = 1 / limit[r];
                most[r] = limit[r] == Reaction.NO_LIMIT ? STRAIGHT_ABOVE : SATURATED_ABOVE;
            }
        }
    }

    /** The same curves on other bare areas, m2; a dry body stays dry. */
    Curves on(double[] bareAreaM2) {
        return new Curves(this, bareAreaM2);
    }

    private Curves(Curves same, double[] bareAreaM2) {
        start = same.start;
        rate = same.rate;
        logDensity = same.logDensity;
        limit = same.limit;
        perLimit = same.perLimit;
        most = same.most;
        area = bareAreaM2;
    }

    boolean wet(int body) {
        return start[body + 1] > start[body];
    }

    /** Steepest rate of any reaction, per volt. */
    double steepestPerV() {
        double most = 0;
        for (double r : rate) {
            most = Math.max(most, Math.abs(r));
        }
        return most;
    }

    /** Fills current (A), the part of it that dissolves metal (A) and slope (A/V) of every body at the interface potentials given. */
    void evaluate(double[] interfaceV, double[] current, double[] anodic, double[] slope) {
        for (int b = 0; b < area.length; b++) {
            double out = 0;
            double in = 0;
            double rise = 0;
            double e = interfaceV[b];
            for (int r = start[b]; r < start[b + 1]; r++) {
                double k = rate[r];
                double z = logDensity[r] + k * e;
                double i = Math.exp(Math.min(z, most[r]));
                double di = i;
                if (perLimit[r] != 0) {
                    double damp = 1 / (1 + i * perLimit[r]);
                    i *= damp;
                    di = i * damp;
                } else if (z > most[r]) {
                    i *= 1 + z - most[r];
                }
                if (k > 0) {
                    out += i;
                    rise += k * di;
                } else {
                    in += i;
                    rise -= k * di;
                }
            }
            current[b] = (out - in) * area[b];
            anodic[b] = out * area[b];
            slope[b] = start[b + 1] > start[b] ? (rise + FLOOR_S_PER_M2) * area[b] : 0;
        }
    }

    /** Current of one body, A. */
    double current(int body, double interfaceV) {
        double sum = 0;
        for (int r = start[body]; r < start[body + 1]; r++) {
            double x = Math.exp(Math.min(most[r], logDensity[r] + rate[r] * interfaceV));
            sum += Math.signum(rate[r]) * x / (1 + x * perLimit[r]);
        }
        return sum * area[body];
    }

    /** Integral of the current of one body over its potential, W; up to a constant. */
    double coContent(int body, double interfaceV) {
        double sum = 0;
        for (int r = start[body]; r < start[body + 1]; r++) {
            double k = Math.abs(rate[r]);
            double z = logDensity[r] + rate[r] * interfaceV;
            double over = Math.max(0, z - most[r]);
            double x = Math.exp(Math.min(z, most[r]));
            if (perLimit[r] == 0) {
                sum += x * (1 + over + over * over / 2) / k;
            } else {
                sum += limit[r] / k * (Math.log1p(x * perLimit[r]) + over);
            }
        }
        return sum * area[body];
    }
}

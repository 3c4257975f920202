package sternwright.protection.solver;

import sternwright.protection.circuit.Link;

/** Current, slope and co-content of a galvanic isolator for the voltage across it, lead included. */
final class IsolatorCurve {
    /** Beyond this conductance the diodes are continued as a straight line, so that no trial overflows; none carries so much. */
    private static final double STEEPEST_S = 1e9;

    private final double seriesOhm;
    private final double twiceSaturationA;
    private final double scaleV;
    private final double straightV;
    private double junctionV;
    private double currentA;

    IsolatorCurve(Link.Isolator isolator) {
        seriesOhm = isolator.seriesOhm();
        twiceSaturationA = 2 * isolator.saturationA();
        scaleV = isolator.scaleV();
        double z = STEEPEST_S * scaleV / twiceSaturationA;
        straightV = z > 1 ? scaleV * Math.log(2 * z) : 0;
    }

    /** Solves for the diodes' own voltage; call before the others. */
    void at(double acrossV) {
        double v = Math.abs(acrossV);
        double u = v;
        if (seriesOhm > 0) {
            // Two upper bounds; from above, Newton on this convex function comes down without overshoot.
            double x = v / (twiceSaturationA * seriesOhm);
            u = Math.min(v, scaleV * Math.log(x + Math.sqrt(x * x + 1)));
            for (int k = 0; k < 100; k++) {
                double step = (u + seriesOhm * current(u) - v) / (1 + seriesOhm * slope(u));
                u -= step;
                if (Math.abs(step) <= 1e-15 * Math.max(scaleV, u)) {
                    break;
                }
            }
        }
        junctionV = u;
        currentA = Math.copySign(current(u), acrossV);
    }

    private double current(double u) {
        double bent = Math.min(u, straightV);
        return twiceSaturationA * Math.sinh(bent / scaleV) + (u - bent) * slope(bent);
    }

    private double slope(double u) {
        return twiceSaturationA / scaleV * Math.cosh(Math.min(u, straightV) / scaleV);
    }

    double currentA() {
        return currentA;
    }

    double slopeS() {
        double g = slope(junctionV);
        return g / (1 + g * seriesOhm);
    }

    double coContentW() {
        double bent = Math.min(junctionV, straightV);
        double over = junctionV - bent;
        double diodes = twiceSaturationA * scaleV * (Math.cosh(bent / scaleV) - 1)
                + over * (current(bent) + over * slope(bent) / 2);
        return diodes + seriesOhm * currentA * currentA / 2;
    }
}

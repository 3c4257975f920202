package sternwright.protection.solver;

import java.util.Arrays;

/**
 * Damped Newton method on the co-content h(V, J) of a network: V are node potentials, J currents of the bodies into the water.
 *
 * <p>h = sum of the bodies' co-content at E = V - R J, plus J R J / 2, plus the links' co-content, plus the work of the sources. It is
 * convex where the water resistances are positive semidefinite; at its minimum J equals each body's own current and Kirchhoff's law
 * holds at every node. Nothing in it grows when a water resistance goes to zero.
 */
final class Newton {
    private static final double LONGEST_STEP_V = 20;

    private final Network net;
    private final Factor factor;
    private final IsolatorCurve[] isolators;

    /** Node potentials. */
    final double[] v;

    /** Currents assumed, by body. */
    final double[] j;

    /** Interface potentials, by body. */
    final double[] e;

    /** Currents by the curves at {@link #e}. */
    final double[] i;

    /** The part of {@link #i} that dissolves metal. */
    final double[] anodic;

    private final double[] slope;
    private final double[] outflow;
    private final double[] dv;
    private final double[] dj;
    private final double[] de;
    private final double[] rhs;
    int steps;

    Newton(Network net) {
        this.net = net;
        factor = new Factor(net.matrix);
        isolators = net.isolators.stream().map(IsolatorCurve::new).toArray(IsolatorCurve[]::new);
        int n = net.bodies();
        v = new double[net.nodes];
        j = new double[n];
        e = new double[n];
        i = new double[n];
        anodic = new double[n];
        slope = new double[n];
        outflow = new double[net.nodes];
        dv = new double[net.nodes];
        dj = new double[n];
        de = new double[n];
        rhs = new double[net.matrix.size];
    }

    /** Iterates from the present {@link #v} and {@link #j}; false when it did not settle. */
    boolean run(int mostSteps) {
        double steepest = Math.max(net.curves.steepestPerV(), 30);
        // Convergence is quadratic: a step of this length leaves an error below 1e-10 V behind.
        double settledV = Math.sqrt(1e-10 / steepest);
        int settled = 0;
        interfaces();
        evaluate();
        for (steps = 1; steps <= mostSteps; steps++) {
            direction();
            if (longest(dv) < settledV && longest(de) < settledV) {
                move(1);
                evaluate();
                settled++;
                // Where large opposing currents meet a large water resistance, rounding is what is left after a second
                // such step.
                if (consistent() || settled == 2) {
                    return true;
                }
            } else {
                settled = 0;
                search(Math.min(1, LONGEST_STEP_V / longestWet()));
            }
        }
        return false;
    }

    /** Whether the currents assumed and those of the curves agree to within rounding of the water's voltage. */
    private boolean consistent() {
        for (int b = 0; b < e.length; b++) {
            double mismatchV = net.waterOhm[b] * (j[b] - i[b]);
            if (Math.abs(mismatchV) > 1e-9 + 1e-12 * Math.abs(net.waterOhm[b] * j[b])) {
                return false;
            }
        }
        return true;
    }

    private void interfaces() {
        for (int b = 0; b < e.length; b++) {
            e[b] = v[net.node[b]] - net.waterOhm[b] * j[b];
        }
        for (int m = 0; m < net.mutualOhm.length; m++) {
            e[net.mutualA[m]] -= net.mutualOhm[m] * j[net.mutualB[m]];
            e[net.mutualB[m]] -= net.mutualOhm[m] * j[net.mutualA[m]];
        }
    }

    /** Currents and slopes of all elements, and what leaves each node through links and sources. */
    private void evaluate() {
        net.curves.evaluate(e, i, anodic, slope);
        System.arraycopy(net.drawnA, 0, outflow, 0, outflow.length);
        for (int k = 0; k < net.branchA.length; k++) {
            double across = v[net.branchA[k]] - v[net.branchB[k]];
            double current;
            if (k < net.resistors) {
                current = across * net.conductanceS[k];
            } else {
                isolators[k - net.resistors].at(across);
                current = isolators[k - net.resistors].currentA();
            }
            outflow[net.branchA[k]] += current;
            outflow[net.branchB[k]] -= current;
        }
    }

    private void direction() {
        int[] place = net.matrix.place;
        System.arraycopy(net.fixedDiagonal, 0, factor.diagonal, 0, factor.diagonal.length);
        System.arraycopy(net.fixedUpper, 0, factor.upper, 0, factor.upper.length);
        for (int k = 0; k < isolators.length; k++) {
            int branch = net.resistors + k;
            double g = isolators[k].slopeS();
            factor.diagonal[place[net.branchA[branch]]] += g;
            factor.diagonal[place[net.branchB[branch]]] += g;
            factor.upper[net.branchEntry[branch]] -= g;
        }
        for (int n = 0; n < outflow.length; n++) {
            rhs[place[n]] = -outflow[n];
        }
        for (int b = 0; b < e.length; b++) {
            int at = place[net.node[b]];
            int own = net.currentUnknown[b];
            if (own >= 0) {
                factor.diagonal[place[own]] -= 1 / slope[b];
                rhs[at] -= j[b];
                rhs[place[own]] = (j[b] - i[b]) / slope[b];
            } else {
                double damp = 1 / (1 + net.waterOhm[b] * slope[b]);
                factor.diagonal[at] += slope[b] * damp;
                rhs[at] -= i[b] + slope[b] * damp * net.waterOhm[b] * (j[b] - i[b]);
            }
        }
        if (!factor.factorise()) {
            throw new ArithmeticException("singular circuit matrix");
        }
        factor.solve(rhs);
        spread(place);
    }

    private void spread(int[] place) {
        for (int n = 0; n < dv.length; n++) {
            dv[n] = rhs[place[n]];
        }
        for (int b = 0; b < e.length; b++) {
            int own = net.currentUnknown[b];
            double dvb = dv[net.node[b]];
            if (own >= 0) {
                dj[b] = rhs[place[own]];
            } else {
                de[b] = (dvb + net.waterOhm[b] * (j[b] - i[b])) / (1 + net.waterOhm[b] * slope[b]);
                dj[b] = slope[b] * de[b] + i[b] - j[b];
            }
        }
        if (net.mutualOhm.length > 0) {
            for (int b = 0; b < e.length; b++) {
                if (net.currentUnknown[b] >= 0 || !net.curves.wet(b)) {
                    de[b] = dv[net.node[b]] - net.waterOhm[b] * dj[b];
                }
            }
            for (int m = 0; m < net.mutualOhm.length; m++) {
                de[net.mutualA[m]] -= net.mutualOhm[m] * dj[net.mutualB[m]];
                de[net.mutualB[m]] -= net.mutualOhm[m] * dj[net.mutualA[m]];
            }
        }
    }

    /** Longest change of an interface; a dry joint may lie thousands of volts away behind a large resistance. */
    private double longestWet() {
        double most = Double.MIN_NORMAL;
        for (int b = 0; b < de.length; b++) {
            most = net.curves.wet(b) ? Math.max(most, Math.abs(de[b])) : most;
        }
        return most;
    }

    private static double longest(double[] change) {
        double most = 0;
        for (double d : change) {
            most = Math.max(most, Math.abs(d));
        }
        return most;
    }

    /**
     * Line search on the slope of h along the direction: the full step where h still falls at its end, else back by interpolation until
     * the slope there is at most half of what it was and h is lower than before.
     */
    private void search(double first) {
        double slope0 = descent();
        double reached = first;
        move(reached);
        evaluate();
        double low = 0;
        double slopeLow = slope0;
        double slopeNow = descent();
        double high = reached;
        double slopeHigh = slopeNow;
        for (int k = 0; k < 60 && slopeNow > 0 && !(slopeNow <= -0.5 * slope0 && lower(reached)); k++) {
            double secant = low + (high - low) * slopeLow / (slopeLow - slopeHigh);
            double t = Math.max(secant, low + 0.3 * (high - low));
            move(t - reached);
            reached = t;
            evaluate();
            slopeNow = descent();
            if (slopeNow > 0) {
                high = t;
                slopeHigh = slopeNow;
            } else if (slopeNow < 0.5 * slope0) {
                low = t;
                slopeLow = slopeNow;
                slopeNow = slopeHigh;
            }
        }
    }

    /** Whether h is not above what it was t back along the direction, to rounding. */
    private boolean lower(double t) {
        double sum = 0;
        double size = 0;
        for (int b = 0; b < e.length; b++) {
            double body = net.curves.coContent(b, e[b]) - net.curves.coContent(b, e[b] - t * de[b]);
            double wNow = v[net.node[b]] - e[b];
            double wBefore = wNow - t * (dv[net.node[b]] - de[b]);
            body += (j[b] * wNow - (j[b] - t * dj[b]) * wBefore) / 2;
            sum += body;
            size += Math.abs(body);
        }
        for (int k = 0; k < net.branchA.length; k++) {
            double now = v[net.branchA[k]] - v[net.branchB[k]];
            double before = now - t * (dv[net.branchA[k]] - dv[net.branchB[k]]);
            double branch = branchCoContent(k, now) - branchCoContent(k, before);
            sum += branch;
            size += Math.abs(branch);
        }
        for (int n = 0; n < v.length; n++) {
            sum += net.drawnA[n] * t * dv[n];
        }
        return sum <= 1e-12 * size;
    }

    private double branchCoContent(int branch, double acrossV) {
        if (branch < net.resistors) {
            return net.conductanceS[branch] * acrossV * acrossV / 2;
        }
        IsolatorCurve isolator = isolators[branch - net.resistors];
        double kept = v[net.branchA[branch]] - v[net.branchB[branch]];
        isolator.at(acrossV);
        double content = isolator.coContentW();
        isolator.at(kept);
        return content;
    }

    private void move(double t) {
        for (int n = 0; n < v.length; n++) {
            v[n] += t * dv[n];
        }
        for (int b = 0; b < e.length; b++) {
            j[b] += t * dj[b];
        }
        interfaces();
    }

    /** Slope of h along the present direction, W. */
    private double descent() {
        double sum = 0;
        for (int n = 0; n < v.length; n++) {
            sum += outflow[n] * dv[n];
        }
        for (int b = 0; b < e.length; b++) {
            sum += i[b] * de[b] + j[b] * (dv[net.node[b]] - de[b]);
        }
        return sum;
    }

    /** Largest imbalance of current at any node, A. */
    double residualA() {
        double[] sum = Arrays.copyOf(outflow, outflow.length);
        for (int b = 0; b < i.length; b++) {
            sum[net.node[b]] += i[b];
        }
        double most = 0;
        for (double s : sum) {
            most = Math.max(most, Math.abs(s));
        }
        return most;
    }
}

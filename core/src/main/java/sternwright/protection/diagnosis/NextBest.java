package sternwright.protection.diagnosis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import sternwright.protection.register.BoatBody;
import sternwright.protection.register.BoatJoint;

/**
 * Ranks measurements by the information expected of them on what is wrong: entropy of the hypotheses now less its mean once the value
 * is known (D. V. Lindley 1956).
 */
final class NextBest {
    private static final int MOST_CASES = 60;
    private static final int GRID = 81;
    private static final int LISTED = 8;
    private static final double LEAST_BITS = 0.005;

    private final BoatModel model;
    private final List<Weighed> cases;
    private final double logTotal;

    NextBest(BoatModel model, List<Weighed> weighed, double logTotal) {
        this.model = model;
        this.logTotal = logTotal;
        cases = weighed.stream()
                .sorted(Comparator.comparingDouble(Weighed::logWeight).reversed())
                .limit(MOST_CASES)
                .toList();
    }

    List<Diagnosis.NextMeasurement> rank(List<Measurement> taken, double[] y) {
        List<Measurement> candidates = candidates(new HashSet<>(taken));
        double[][] mean = new double[cases.size()][];
        double[][] deviation = new double[cases.size()][];
        IntStream.range(0, cases.size()).parallel().forEach(k -> {
            Weighed w = cases.get(k);
            double[] m = model.mean(w.example(), candidates);
            double[][] slopes = model.slopes(w.example(), candidates, m);
            mean[k] = new double[m.length];
            deviation[k] = new double[m.length];
            for (int c = 0; c < m.length; c++) {
                Quantity q = candidates.get(c).quantity();
                double own = q.usualError() * q.usualError() + q.modelError() * q.modelError();
                double[] along = new double[slopes.length];
                for (int u = 0; u < along.length; u++) {
                    along[u] = slopes[u][c];
                }
                double[] known = w.readings().conditional(y, m[c], along, own);
                mean[k][c] = known[0];
                deviation[k][c] = Math.sqrt(known[1]);
            }
        });
        List<Diagnosis.NextMeasurement> list = new ArrayList<>();
        for (int c = 0; c < candidates.size(); c++) {
            double bits = bits(mean, deviation, c);
            if (bits > LEAST_BITS) {
                list.add(new Diagnosis.NextMeasurement(
                        candidates.get(c), bits, candidates.get(c).quantity().minutes()));
            }
        }
        list.sort(Comparator.comparingDouble(Diagnosis.NextMeasurement::bits).reversed());
        return List.copyOf(list.subList(0, Math.min(LISTED, list.size())));
    }

    private List<Measurement> candidates(Set<Measurement> taken) {
        List<Measurement> all = new ArrayList<>();
        boolean shore = model.resting().shoreLead();
        for (BoatBody b : model.boat().bodies()) {
            if (!b.reachable()) {
                if (b.kind().equals("engine")) {
                    all.add(new Measurement(Quantity.POTENTIAL_FAR, b.id(), Setting.USUAL));
                }
                continue;
            }
            all.add(new Measurement(Quantity.POTENTIAL_CLOSE, b.id(), Setting.USUAL));
            if (shore) {
                all.add(new Measurement(Quantity.POTENTIAL_CLOSE, b.id(), new Setting(true, true)));
            }
            if (b.anode()) {
                all.add(new Measurement(Quantity.WASTAGE_RATIO, b.id(), model.resting()));
            } else {
                all.add(new Measurement(Quantity.POTENTIAL_CLOSE, b.id(), new Setting(false, false)));
            }
        }
        for (BoatJoint j : model.boat().joints()) {
            String id = j.link().id();
            if (j.kind() == BoatJoint.Kind.SHORE_EARTH) {
                if (shore) {
                    all.add(new Measurement(Quantity.SHORE_CURRENT, id, new Setting(true, true)));
                }
                continue;
            }
            if (!j.measurable()) {
                continue;
            }
            all.add(new Measurement(Quantity.JOINT_OHM, id, Setting.USUAL));
            if (j.link().conducts()) {
                all.add(new Measurement(Quantity.JOINT_VOLTAGE, id, Setting.USUAL));
            }
        }
        all.removeAll(taken);
        return all;
    }

    /** Mutual information of one reading and the hypothesis, bits, by the trapezoid rule over the mixture. */
    private double bits(double[][] mean, double[][] deviation, int c) {
        Map<Hypothesis, Integer> index = new HashMap<>();
        double[] weight = new double[cases.size()];
        int[] of = new int[cases.size()];
        double sum = 0;
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int k = 0; k < weight.length; k++) {
            weight[k] = Math.exp(cases.get(k).logWeight() - logTotal);
            sum += weight[k];
            of[k] = index.computeIfAbsent(cases.get(k).example().hypothesis(), h -> index.size());
            low = Math.min(low, mean[k][c] - 4 * deviation[k][c]);
            high = Math.max(high, mean[k][c] + 4 * deviation[k][c]);
        }
        double[] share = new double[index.size()];
        double prior = 0;
        for (int k = 0; k < weight.length; k++) {
            share[of[k]] += weight[k] / sum;
        }
        for (double p : share) {
            prior -= p > 0 ? p * Math.log(p) : 0;
        }
        return Math.max(0, prior - remaining(mean, deviation, c, weight, of, share.length, low, high)) / Math.log(2);
    }

    private static double remaining(
            double[][] mean, double[][] deviation, int c, double[] weight, int[] of, int n, double low, double high) {
        double expected = 0;
        double mass = 0;
        // A grid fine enough for the narrowest bell is cheap: the bells of one quantity have like widths.
        double narrowest = Double.POSITIVE_INFINITY;
        for (double[] d : deviation) {
            narrowest = Math.min(narrowest, d[c]);
        }
        int points = (int) Math.max(GRID, Math.min(2000, 3 * (high - low) / narrowest));
        double[] density = new double[n];
        for (int g = 0; g <= points; g++) {
            double x = low + (high - low) * g / points;
            Arrays.fill(density, 0);
            double total = 0;
            for (int k = 0; k < weight.length; k++) {
                double z = (x - mean[k][c]) / deviation[k][c];
                double p = weight[k] * Math.exp(-z * z / 2) / deviation[k][c];
                density[of[k]] += p;
                total += p;
            }
            mass += total;
            for (double p : density) {
                expected -= p > 0 ? p * Math.log(p / total) : 0;
            }
        }
        return mass > 0 ? expected / mass : 0;
    }
}

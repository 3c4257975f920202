package sternwright.protection.diagnosis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.commons.numbers.gamma.RegularizedGamma;
import sternwright.protection.fault.Fault;
import sternwright.protection.register.BoatCircuit;

/** Weighs every single fault and every pair of faults against readings. */
public final class Diagnoser {
    /** Probability beforehand that what is wrong is none of the list. */
    private static final double OTHER_PRIOR = 0.01;

    /** Pairs worse than the best by this in logarithm after a rough weighing are not weighed exactly. */
    private static final double HOPELESS = 10;

    private static final double RARE = 0.003;
    private static final double TOO_SMALL_TO_LIST = 0.001;

    private final BoatModel model;
    private final List<Hypothesis> hypotheses;

    /**
     * Prepares the diagnosis of a boat.
     *
     * @param boat its circuit, sound
     * @param faults the faults to weigh, singly and in pairs
     */
    public Diagnoser(BoatCircuit boat, List<Fault> faults) {
        model = new BoatModel(boat);
        hypotheses = Hypothesis.upToPairs(faults);
    }

    /**
     * Diagnoses from readings; none gives the odds before any.
     *
     * @param observations the readings
     * @throws IllegalArgumentException where a reading names no body or joint of the boat
     */
    public Diagnosis diagnose(List<Observation> observations) {
        observations.forEach(this::requireKnown);
        List<Measurement> taken =
                observations.stream().map(Observation::measurement).toList();
        double[] y = observations.stream()
                .mapToDouble(o -> o.measurement().quantity().scaled(o.value()))
                .toArray();
        double[] variance =
                observations.stream().mapToDouble(Diagnoser::variance).toArray();
        List<Weighed> weighed = weigh(taken, y, variance);
        double other = Math.log(OTHER_PRIOR) + other(taken, y, variance);
        double top = weighed.stream().mapToDouble(Weighed::logWeight).max().orElse(0);
        top = Math.max(top, other);
        double total = Math.exp(other - top);
        for (Weighed w : weighed) {
            total += Math.exp(w.logWeight() - top);
        }
        Map<Hypothesis, Double> posterior = new LinkedHashMap<>();
        for (Weighed w : weighed) {
            posterior.merge(w.example().hypothesis(), Math.exp(w.logWeight() - top) / total, Double::sum);
        }
        Weighed best = weighed.stream()
                .max(Comparator.comparingDouble(Weighed::logWeight))
                .orElseThrow();
        double fit = y.length == 0
                ? 1
                : RegularizedGamma.Q.value(y.length / 2.0, best.readings().distance(y) / 2);
        double otherShare = Math.exp(other - top) / total;
        List<Diagnosis.NextMeasurement> next = new NextBest(model, weighed, top + Math.log(total)).rank(taken, y);
        return answer(posterior, otherShare, fit, next);
    }

    private static double variance(Observation o) {
        double model = o.measurement().quantity().modelError();
        return o.error() * o.error() + model * model;
    }

    private void requireKnown(Observation o) {
        Places.problem(model.boat(), o).ifPresent(p -> {
            throw new IllegalArgumentException(p.toString());
        });
    }

    private List<Weighed> weigh(List<Measurement> taken, double[] y, double[] variance) {
        Case sound = Case.of(hypotheses.get(0)).get(0);
        double[][] soundSlopes = model.slopes(sound, taken, model.mean(sound, taken));
        List<Weighed> rough = hypotheses.parallelStream()
                .flatMap(h -> Case.of(h).stream())
                .map(c -> {
                    double[] mean = model.mean(c, taken);
                    boolean exact = c.hypothesis().faults().size() < 2;
                    double[][] slopes = exact ? model.slopes(c, taken, mean) : soundSlopes;
                    return weighed(c, new Gaussian(mean, slopes, variance), y);
                })
                .toList();
        double best = rough.stream().mapToDouble(Weighed::logWeight).max().orElse(0);
        return rough.parallelStream()
                .filter(w -> w.logWeight() > best - 3 * HOPELESS)
                .map(w -> w.logWeight() > best - HOPELESS
                                && w.example().hypothesis().faults().size() == 2
                        ? exact(w.example(), taken, y, variance)
                        : w)
                .toList();
    }

    private Weighed exact(Case c, List<Measurement> taken, double[] y, double[] variance) {
        double[] mean = model.mean(c, taken);
        return weighed(c, new Gaussian(mean, model.slopes(c, taken, mean), variance), y);
    }

    private static Weighed weighed(Case c, Gaussian readings, double[] y) {
        double prior = Math.log(c.hypothesis().prior() * c.weight() * (1 - OTHER_PRIOR));
        return new Weighed(c, prior + readings.logDensity(y), readings);
    }

    /** Likelihood of the readings if anything at all may be wrong. */
    private double other(List<Measurement> taken, double[] y, double[] variance) {
        Case sound = Case.of(hypotheses.get(0)).get(0);
        double[] mean = model.mean(sound, taken);
        double[] wide = variance.clone();
        for (int m = 0; m < wide.length; m++) {
            double anywhere = taken.get(m).quantity().anywhere();
            wide[m] += anywhere * anywhere;
        }
        return new Gaussian(mean, model.slopes(sound, taken, mean), wide).logDensity(y);
    }

    private Diagnosis answer(
            Map<Hypothesis, Double> posterior, double other, double fit, List<Diagnosis.NextMeasurement> next) {
        List<Diagnosis.Verdict> verdicts = new ArrayList<>();
        Map<String, Double> byFault = new HashMap<>();
        double sound = 0;
        for (Map.Entry<Hypothesis, Double> e : posterior.entrySet()) {
            if (e.getValue() >= TOO_SMALL_TO_LIST) {
                verdicts.add(new Diagnosis.Verdict(e.getKey(), e.getValue()));
            }
            sound += e.getKey().faults().isEmpty() ? e.getValue() : 0;
            e.getKey().faults().forEach(f -> byFault.merge(f.id(), e.getValue(), Double::sum));
        }
        verdicts.sort(Comparator.comparingDouble(Diagnosis.Verdict::probability).reversed());
        boolean nothing = fit < RARE || other > 0.5;
        return new Diagnosis(
                verdicts,
                sound,
                other,
                nothing,
                fit,
                byFault,
                next,
                summary(verdicts, other, nothing, next, model.boat()));
    }

    private static String summary(
            List<Diagnosis.Verdict> verdicts,
            double other,
            boolean nothing,
            List<Diagnosis.NextMeasurement> next,
            BoatCircuit boat) {
        String what;
        if (nothing || verdicts.isEmpty()) {
            what =
                    "Nothing on the list explains these readings. Check half cell, meter, unit and where the half cell hung, then look for"
                            + " what the model cannot see: alternating leakage, crevices, microbes, a second boat alongside.";
        } else {
            Diagnosis.Verdict v = verdicts.get(0);
            what = String.format(
                    Locale.ROOT,
                    "Most likely (%.0f %%): %s.",
                    100 * v.probability(),
                    v.hypothesis().words());
            if (other > 0.1) {
                what += String.format(Locale.ROOT, " With %.0f %% it is something else.", 100 * other);
            }
        }
        return next.isEmpty()
                ? what
                : what + " Measure next: " + next.get(0).measurement().words(boat) + ".";
    }
}

package sternwright.protection.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Month;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import sternwright.boat.Berth;
import sternwright.boat.ShorePower;
import sternwright.protection.fault.Fault;
import sternwright.protection.fault.FaultKind;
import sternwright.protection.fault.FaultList;
import sternwright.protection.register.BoatCircuit;
import sternwright.protection.register.CircuitCondition;
import sternwright.protection.register.ProtectionBoats;

class DiagnoserTest {
    private static final BoatCircuit BOAT = ProtectionBoats.circuit(
            ProtectionBoats.saildrive(), ProtectionBoats.sea(ShorePower.NONE), CircuitCondition.atBerth(Month.JULY));
    private static final Diagnoser DIAGNOSER = new Diagnoser(BOAT, FaultList.of(BOAT));

    private static Measurement close(String body) {
        return new Measurement(Quantity.POTENTIAL_CLOSE, body, Setting.USUAL);
    }

    private static Observation read(String body, double volts) {
        return Observation.of(close(body), volts);
    }

    private static double probability(Diagnosis d, FaultKind kind) {
        return d.faultProbability().entrySet().stream()
                .filter(e -> e.getKey()
                        .startsWith(
                                kind.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-') + ":"))
                .mapToDouble(Map.Entry::getValue)
                .sum();
    }

    @Test
    void readingsOfASoundBoatLeaveItSound() {
        Diagnosis d = DIAGNOSER.diagnose(
                List.of(read("main/leg", -0.967), read("main/propeller", -0.956), read("main/leg-anode", -0.989)));
        assertTrue(d.soundProbability() > 0.5, d.summary());
        assertFalse(d.nothingExplains());
    }

    @Test
    void legAndPropellerAloneCannotTellALooseFromASpentAnode() {
        Diagnosis d = DIAGNOSER.diagnose(List.of(read("main/leg", -0.710), read("main/propeller", -0.697)));
        assertTrue(probability(d, FaultKind.ANODE_LOOSE) > 0.1, d.summary());
        assertTrue(probability(d, FaultKind.ANODE_SPENT) > 0.1, d.summary());
        // What separates them: the anode's own potential or weight, or the resistance of its joint.
        Measurement next = d.next().get(0).measurement();
        assertTrue(next.where().contains("leg-anode"), d.next().toString());
    }

    @Test
    void theAnodesOwnPotentialSeparatesThem() {
        Diagnosis loose = DIAGNOSER.diagnose(
                List.of(read("main/leg", -0.710), read("main/propeller", -0.697), read("main/leg-anode", -1.050)));
        assertTrue(probability(loose, FaultKind.ANODE_LOOSE) > 0.8, loose.summary());
        Diagnosis spent = DIAGNOSER.diagnose(
                List.of(read("main/leg", -0.710), read("main/propeller", -0.697), read("main/leg-anode", -0.706)));
        assertTrue(probability(spent, FaultKind.ANODE_SPENT) > 0.8, spent.summary());
    }

    @Test
    void aLegBondedToTheEngineShowsInTheIsolationResistance() {
        Diagnosis d = DIAGNOSER.diagnose(List.of(
                read("main/leg", -0.923),
                read("main/propeller", -0.914),
                Observation.of(new Measurement(Quantity.JOINT_OHM, "main/leg~main/engine", Setting.USUAL), 0.02)));
        assertTrue(probability(d, FaultKind.ISOLATION_BRIDGED) > 0.8, d.summary());
    }

    @Test
    void whatNothingExplainsIsSaid() {
        Diagnosis d = DIAGNOSER.diagnose(
                List.of(read("main/leg", -0.20), read("main/propeller", -1.20), read("main/leg-anode", -0.50)));
        assertTrue(d.nothingExplains(), d.summary());
        assertTrue(d.summary().startsWith("Nothing on the list explains"));
    }

    @Test
    void twoFaultsAtOnceAreFoundTogether() {
        // Leg joined to the engine, and the anode's joint open: the readings are computed from the boat with both.
        Map<FaultKind, Fault> faults = new EnumMap<>(FaultKind.class);
        FaultList.of(BOAT).forEach(f -> faults.putIfAbsent(f.kind(), f));
        Hypothesis both = new Hypothesis(
                List.of(faults.get(FaultKind.ISOLATION_BRIDGED), faults.get(FaultKind.ANODE_LOOSE)), 0.001);
        List<Measurement> taken = List.of(
                close("main/leg"),
                close("main/propeller"),
                close("main/leg-anode"),
                new Measurement(Quantity.JOINT_OHM, "main/leg~main/engine", Setting.USUAL));
        double[] values = new BoatModel(BOAT).at(Case.of(both).get(0), taken, new double[Unknowns.ALL]);
        List<Observation> readings = new ArrayList<>();
        for (int m = 0; m < values.length; m++) {
            boolean ohm = taken.get(m).quantity() == Quantity.JOINT_OHM;
            readings.add(Observation.of(taken.get(m), ohm ? Math.pow(10, values[m]) : values[m]));
        }
        Diagnosis d = DIAGNOSER.diagnose(readings);
        assertTrue(same(d.verdicts().get(0).hypothesis(), both), d.summary());
        assertFalse(d.nothingExplains());
    }

    @Test
    void aBerthKnownForFastAnodesRaisesTheOddsOfAHotBerth() {
        Berth calm = ProtectionBoats.sea(ShorePower.NONE);
        Berth hot = new Berth(
                calm.id(), calm.name(), calm.latitudeDeg(), calm.water(), null, null, true, calm.shorePower());
        BoatCircuit there =
                ProtectionBoats.circuit(ProtectionBoats.saildrive(), hot, CircuitCondition.atBerth(Month.JULY));
        Diagnoser atHot = new Diagnoser(there, FaultList.of(there));
        List<Observation> fast =
                List.of(Observation.of(new Measurement(Quantity.WASTAGE_RATIO, "main/leg-anode", Setting.USUAL), 2.2));
        assertTrue(probability(atHot.diagnose(List.of()), FaultKind.HOT_BERTH)
                > 4 * probability(DIAGNOSER.diagnose(List.of()), FaultKind.HOT_BERTH));
        double calmly = probability(DIAGNOSER.diagnose(fast), FaultKind.HOT_BERTH);
        double hotly = probability(atHot.diagnose(fast), FaultKind.HOT_BERTH);
        assertTrue(hotly > calmly + 0.2, calmly + " and " + hotly);
    }

    @Test
    void aPlaceThatCannotBeReadIsSaidWithTheNearestThatCan() {
        Places.Problem p = Places.problem(BOAT, read("main/leg-anod", -1.0)).orElseThrow();
        assertEquals("Perhaps \"main/leg-anode\" is meant.", p.advice());
        Places.Problem leg = Places.problem(
                        BOAT, Observation.of(new Measurement(Quantity.WASTAGE_RATIO, "main/leg", Setting.USUAL), 1.5))
                .orElseThrow();
        assertEquals("an anode", leg.expected());
        assertTrue(Places.problem(BOAT, read("main/leg", -0.9)).isEmpty());
    }

    @Test
    void probabilitiesSumToOne() {
        Diagnosis d = DIAGNOSER.diagnose(List.of());
        double listed = d.verdicts().stream()
                .mapToDouble(Diagnosis.Verdict::probability)
                .sum();
        assertEquals(1, listed + d.otherProbability(), 0.03);
        assertTrue(d.next().size() > 3);
    }

    @Test
    void badReadingsAreRefusedInWords() {
        assertThrows(IllegalArgumentException.class, () -> read("main/leg", -970));
        assertThrows(IllegalArgumentException.class, () -> read("main/leg", Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> DIAGNOSER.diagnose(List.of(read("main/rudder", -0.9))));
        assertThrows(
                IllegalArgumentException.class,
                () -> Observation.of(new Measurement(Quantity.JOINT_OHM, "main/leg~main/engine", Setting.USUAL), -3));
    }

    /**
     * Of the cases given a probability p, a share of about p is right: truths drawn from the prior, unknowns from their spreads, readings from
     * the full circuit (not its linear form), all seeded.
     */
    @Test
    void statedProbabilitiesAreRightAsOftenAsTheySay() {
        List<Measurement> taken = List.of(
                close("main/leg"),
                close("main/propeller"),
                close("main/leg-anode"),
                new Measurement(Quantity.JOINT_OHM, "main/leg~main/engine", Setting.USUAL));
        List<Hypothesis> hypotheses = Hypothesis.upToPairs(FaultList.of(BOAT)).stream()
                .filter(h -> !h.faults().isEmpty())
                .toList();
        SplittableRandom random = new SplittableRandom(11);
        BoatModel model = new BoatModel(BOAT);
        double[] stated = new double[3];
        int[] right = new int[3];
        int[] count = new int[3];
        for (int n = 0; n < 400; n++) {
            // A draw from the prior given that something is wrong; the diagnosis is told so by leaving "sound" out of
            // the count.
            Hypothesis truth = draw(hypotheses, random);
            Diagnosis d = DIAGNOSER.diagnose(simulate(model, truth, taken, random));
            double wrong = 1 - d.soundProbability() - d.otherProbability();
            for (Diagnosis.Verdict v : d.verdicts()) {
                if (v.hypothesis().faults().isEmpty() || wrong <= 0) {
                    continue;
                }
                double p = v.probability() / wrong;
                int bin = p < 0.25 ? -1 : p < 0.5 ? 0 : p < 0.8 ? 1 : 2;
                if (bin >= 0) {
                    stated[bin] += p;
                    count[bin]++;
                    right[bin] += same(v.hypothesis(), truth) ? 1 : 0;
                }
            }
        }
        for (int bin = 0; bin < 3; bin++) {
            double mean = stated[bin] / count[bin];
            double hit = (double) right[bin] / count[bin];
            double noise = 3 * Math.sqrt(mean * (1 - mean) / count[bin]);
            assertTrue(count[bin] > 20, "bin " + bin + " holds " + count[bin]);
            assertEquals(mean, hit, noise + 0.04, "bin " + bin + " of " + count[bin]);
        }
    }

    private static boolean same(Hypothesis a, Hypothesis b) {
        return a.words().equals(b.words());
    }

    private static Hypothesis draw(List<Hypothesis> hypotheses, SplittableRandom random) {
        double sum = hypotheses.stream().mapToDouble(Hypothesis::prior).sum();
        double x = random.nextDouble() * sum;
        for (Hypothesis h : hypotheses) {
            x -= h.prior();
            if (x <= 0) {
                return h;
            }
        }
        return hypotheses.get(0);
    }

    private static List<Observation> simulate(
            BoatModel model, Hypothesis truth, List<Measurement> taken, SplittableRandom random) {
        List<Case> cases = Case.of(truth);
        double x = random.nextDouble();
        Case drawn = cases.get(cases.size() - 1);
        for (Case c : cases) {
            x -= c.weight();
            if (x <= 0) {
                drawn = c;
                break;
            }
        }
        double[] unknowns = new double[Unknowns.ALL];
        for (int u = 0; u < unknowns.length; u++) {
            unknowns[u] = Unknowns.SPREAD[u] * random.nextGaussian();
        }
        double[] values = model.at(drawn, taken, unknowns);
        List<Observation> out = new ArrayList<>();
        for (int m = 0; m < values.length; m++) {
            Quantity q = taken.get(m).quantity();
            double error = Math.hypot(q.usualError(), q.modelError());
            double v = values[m] + error * random.nextGaussian();
            out.add(Observation.of(taken.get(m), q == Quantity.JOINT_OHM ? Math.pow(10, v) : v));
        }
        return out;
    }
}

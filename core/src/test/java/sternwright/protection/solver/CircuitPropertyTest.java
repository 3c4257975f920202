package sternwright.protection.solver;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sternwright.protection.circuit.Body;
import sternwright.protection.circuit.Circuit;
import sternwright.protection.circuit.CurrentSource;
import sternwright.protection.circuit.Link;
import sternwright.protection.circuit.MutualResistance;
import sternwright.protection.circuit.Reaction;

/** Properties that hold for every circuit, over seeded random ones. */
class CircuitPropertyTest {
    private static final Circuit BOAT = ReferenceCase.named("03-leg-protected").circuit();

    static IntStream seeds() {
        return IntStream.range(0, 60);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void currentsSumToZeroInEveryGroupAndAtEveryBody(int seed) {
        Circuit circuit = RandomCircuits.mixed(seed);
        CircuitState state = CircuitSolver.solve(circuit);
        double largest = circuit.bodies().stream()
                .mapToDouble(b -> Math.abs(state.body(b.id()).currentA()))
                .max()
                .orElseThrow();
        for (Body b : circuit.bodies()) {
            double sum = state.body(b.id()).currentA();
            for (Link l : circuit.links()) {
                sum += l.a().equals(b.id()) ? state.linkCurrentA(l.id()) : 0;
                sum -= l.b().equals(b.id()) ? state.linkCurrentA(l.id()) : 0;
            }
            for (CurrentSource s : circuit.sources()) {
                sum += s.from().equals(b.id()) ? s.currentA() : 0;
                sum -= s.to().equals(b.id()) ? s.currentA() : 0;
            }
            assertEquals(0, sum, 1e-8 * Math.max(1, largest), b.id());
        }
        assertTrue(state.residualA() <= 1e-8 * Math.max(1, largest), "residual " + state.residualA());
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void everyElementObeysItsOwnLaw(int seed) {
        Circuit circuit = RandomCircuits.mixed(seed);
        CircuitState state = CircuitSolver.solve(circuit);
        for (Body b : circuit.bodies()) {
            BodyState s = state.body(b.id());
            double water = b.waterOhm() * s.currentA();
            for (MutualResistance m : circuit.mutualResistances()) {
                water += m.a().equals(b.id()) ? m.ohm() * state.body(m.b()).currentA() : 0;
                water += m.b().equals(b.id()) ? m.ohm() * state.body(m.a()).currentA() : 0;
            }
            assertEquals(s.interfaceV() + water, s.metalV(), 1e-7, b.id());
            assertEquals(b.currentA(s.interfaceV()), s.currentA(), 1e-9 + 1e-9 * Math.abs(s.currentA()), b.id());
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void oneAnswerWhereverTheIterationStarts(int seed) {
        Circuit circuit = RandomCircuits.mixed(seed);
        CircuitSolver solver = new CircuitSolver(circuit);
        CircuitState cold = solver.solve();
        Circuit other = RandomCircuits.shaken(circuit, seed);
        CircuitState elsewhere = CircuitSolver.solve(other);
        CircuitState warm = solver.solve(elsewhere);
        for (Body b : circuit.bodies()) {
            assertEquals(cold.body(b.id()).metalV(), warm.body(b.id()).metalV(), 1e-8, b.id());
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void withoutSourcesPotentialsLieBetweenTheExtremeFreePotentials(int seed) {
        Circuit circuit = RandomCircuits.withoutSources(seed);
        CircuitState state = CircuitSolver.solve(circuit);
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (Body b : circuit.bodies()) {
            if (b.wet()) {
                double free = CircuitSolver.solve(new Circuit(List.of(b), List.of()))
                        .body(0)
                        .metalV();
                low = Math.min(low, free);
                high = Math.max(high, free);
            }
        }
        for (Body b : circuit.bodies()) {
            assertTrue(state.body(b.id()).metalV() >= low - 1e-8, b.id());
            assertTrue(state.body(b.id()).metalV() <= high + 1e-8, b.id());
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void areasAndConductancesScaleTogether(int seed) {
        Circuit circuit = RandomCircuits.mixed(seed);
        CircuitState state = CircuitSolver.solve(circuit);
        double k = 37.5;
        CircuitState scaled = CircuitSolver.solve(RandomCircuits.scaled(circuit, k));
        for (Body b : circuit.bodies()) {
            BodyState s = state.body(b.id());
            assertEquals(s.metalV(), scaled.body(b.id()).metalV(), 1e-8, b.id());
            assertEquals(
                    s.currentA() * k,
                    scaled.body(b.id()).currentA(),
                    1e-7 * k * Math.max(1e-3, Math.abs(s.currentA())));
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void openingTheBondToTheOnlyAnodeNeverProtectsMore(int seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double[] factor = random.doubles(6, -1, 1).map(x -> Math.pow(10, x)).toArray();
        Circuit circuit = BOAT.withBody(
                        "leg", b -> b.withAreaM2(b.areaM2() * factor[0]).withWaterOhm(b.waterOhm() * factor[1]))
                .withBody("propeller", b -> b.withAreaM2(b.areaM2() * factor[2]))
                .withBody("leg-anode", b -> b.withAreaM2(b.areaM2() * factor[3]).withWaterOhm(b.waterOhm() * factor[4]))
                .withLink(new Link.Resistor("anode-bolt", "leg", "leg-anode", 0.002 * factor[5]));
        CircuitState bonded = CircuitSolver.solve(circuit);
        CircuitState open = CircuitSolver.solve(circuit.withLink(new Link.OpenJoint("anode-bolt", "leg", "leg-anode")));
        for (String part : List.of("leg", "propeller")) {
            assertTrue(bonded.body(part).interfaceV() <= open.body(part).interfaceV() + 1e-9, part);
            assertTrue(bonded.body(part).anodicCurrentA() <= open.body(part).anodicCurrentA() + 1e-12, part);
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void anAdjustedSolverAgreesWithOneMadeAnew(int seed) {
        Circuit circuit = RandomCircuits.mixed(seed);
        SplittableRandom random = new SplittableRandom(seed);
        double scale = random.nextDouble(0.5, 2);
        double[] factor = random.doubles(circuit.bodies().size(), 0.5, 2).toArray();
        List<Body> bodies = new ArrayList<>();
        for (int b = 0; b < factor.length; b++) {
            Body old = circuit.bodies().get(b);
            bodies.add(old.withAreaM2(old.areaM2() * factor[b]).withWaterOhm(old.waterOhm() * scale));
        }
        List<MutualResistance> mutual = circuit.mutualResistances().stream()
                .map(m -> new MutualResistance(m.a(), m.b(), m.ohm() * scale))
                .toList();
        CircuitState anew = CircuitSolver.solve(new Circuit(bodies, circuit.links(), circuit.sources(), mutual));
        CircuitState adjusted = new CircuitSolver(circuit)
                .adjusted(
                        bodies.stream().mapToDouble(Body::bareAreaM2).toArray(),
                        bodies.stream().mapToDouble(Body::waterOhm).toArray(),
                        scale)
                .solve();
        for (Body b : bodies) {
            assertEquals(anew.body(b.id()).metalV(), adjusted.body(b.id()).metalV(), 1e-8, b.id());
        }
    }

    @Test
    void aRisingBondResistanceEndsAtTheOpenBond() {
        CircuitState open = CircuitSolver.solve(BOAT.withLink(new Link.OpenJoint("anode-bolt", "leg", "leg-anode")));
        CircuitState far =
                CircuitSolver.solve(BOAT.withLink(new Link.Resistor("anode-bolt", "leg", "leg-anode", 1e12)));
        assertEquals(open.body("leg").metalV(), far.body("leg").metalV(), 1e-6);
        assertEquals(0, far.linkCurrentA("anode-bolt"), 1e-9);
    }

    @Test
    void noWaterResistanceBringsBothPotentialsTogether() {
        CircuitState state = CircuitSolver.solve(BOAT.withBodies(b -> b.withWaterOhm(0)));
        for (Body b : BOAT.bodies()) {
            assertEquals(state.body(b.id()).metalV(), state.body(b.id()).interfaceV(), 1e-12);
        }
    }

    @Test
    void aPerfectJointAndAVerySmallOneAgreeInCurrent() {
        Circuit ring = BOAT.withLink(new Link.Resistor("anode-bolt", "leg", "leg-anode", 0))
                .withLink(new Link.Resistor("prop-shaft", "leg", "propeller", 0))
                .withLink(new Link.Resistor("strap", "propeller", "leg-anode", 0));
        CircuitState perfect = CircuitSolver.solve(ring);
        CircuitState small =
                CircuitSolver.solve(ring.withLink(new Link.Resistor("anode-bolt", "leg", "leg-anode", 2e-6))
                        .withLink(new Link.Resistor("prop-shaft", "leg", "propeller", 2e-6))
                        .withLink(new Link.Resistor("strap", "propeller", "leg-anode", 2e-6)));
        for (String joint : List.of("anode-bolt", "prop-shaft", "strap")) {
            assertEquals(small.linkCurrentA(joint), perfect.linkCurrentA(joint), 1e-5, joint);
        }
    }

    @Test
    void aNobleAreaTenTimesLargerWastesTheBaseMetalFaster() {
        Circuit couple = ReferenceCase.named("02a-steel-bronze-area-ratio").circuit();
        String bronze = couple.bodies().stream()
                .filter(b -> b.material().equals("bronze"))
                .findFirst()
                .orElseThrow()
                .id();
        String steel = couple.bodies().stream()
                .map(Body::id)
                .filter(id -> !id.equals(bronze))
                .findFirst()
                .orElseThrow();
        double before = 0;
        for (double ratio : new double[] {0.1, 1, 10, 100}) {
            double now = CircuitSolver.solve(couple.withBody(bronze, b -> b.withAreaM2(b.areaM2() * ratio)))
                    .body(steel)
                    .anodicCurrentA();
            assertTrue(now > before, "ratio " + ratio);
            before = now;
        }
    }

    @Test
    void theCoupleFollowsTheSlopeParameterLine() {
        // Hartt's slope parameter: cathode potential against cathode current is a straight line with the total circuit
        // resistance as slope.
        Circuit couple = BOAT.withLink(new Link.OpenJoint("prop-shaft", "leg", "propeller"));
        List<double[]> points = new ArrayList<>();
        for (double ohm : new double[] {1, 10, 100}) {
            CircuitState s =
                    CircuitSolver.solve(couple.withLink(new Link.Resistor("anode-bolt", "leg", "leg-anode", ohm)));
            double total = ohm
                    + couple.body("leg").waterOhm()
                    + couple.body("leg-anode").waterOhm();
            points.add(new double[] {
                s.body("leg").interfaceV() - s.body("leg-anode").interfaceV(), total * s.linkCurrentA("anode-bolt") * -1
            });
        }
        points.forEach(p -> assertEquals(p[0], -p[1], 1e-7));
    }

    @Test
    void tenThousandBodiesInALongChainSettle() {
        Circuit chain = RandomCircuits.chain(10_000, 7);
        CircuitState state = CircuitSolver.solve(chain);
        double sum = 0;
        for (int b = 0; b < chain.bodies().size(); b++) {
            sum += state.body(b).currentA();
        }
        assertEquals(0, sum, 1e-6);
        assertTrue(state.steps() < 60, "steps " + state.steps());
    }

    @Test
    void reactionsWithoutALimitHaveNone() {
        Reaction r = Reaction.anodic(-0.25, 0.02, 0.06);
        assertEquals(0.2, r.densityAPerM2(-0.19), 1e-9);
        assertEquals(0.2, Reaction.cathodic(-0.25, 0.2, 0.12, 1e9).densityAPerM2(-0.25), 1e-9);
    }
}

package sternwright.protection.register;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Month;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sternwright.boat.Arrangement;
import sternwright.boat.Boat;
import sternwright.boat.Bond;
import sternwright.boat.Cooling;
import sternwright.boat.HullMaterial;
import sternwright.boat.PartRef;
import sternwright.boat.ShorePower;
import sternwright.boat.Water;
import sternwright.protection.circuit.Link;
import sternwright.protection.circuit.MutualResistance;
import sternwright.protection.solver.CircuitSolver;
import sternwright.protection.solver.CircuitState;

class CircuitFromRegisterTest {
    private static final CircuitCondition JULY = CircuitCondition.atBerth(Month.JULY);

    static Stream<Boat> arrangements() {
        return Stream.of(
                ProtectionBoats.saildrive(),
                ProtectionBoats.twinSterndrive(),
                ProtectionBoats.shaft(true),
                ProtectionBoats.shaft(false),
                ProtectionBoats.pod(),
                ProtectionBoats.jet(),
                ProtectionBoats.steel());
    }

    @ParameterizedTest
    @MethodSource("arrangements")
    void everyArrangementSolvesInEveryWaterAtTheBerthAndRunning(Boat boat) {
        for (Water water : List.of(
                new Water(35.0, null, List.of()), new Water(8.0, null, List.of()), new Water(null, 40.0, List.of()))) {
            for (ShorePower shore : ShorePower.values()) {
                for (CircuitCondition c : List.of(JULY, JULY.underWay())) {
                    BoatCircuit circuit = ProtectionBoats.circuit(boat, ProtectionBoats.berth(water, shore), c);
                    CircuitState state = CircuitSolver.solve(circuit.circuit());
                    assertTrue(state.residualA() < 1e-7);
                    assertEquals(
                            circuit.circuit().bodies().size(), circuit.bodies().size());
                    assertEquals(
                            circuit.circuit().links().size(), circuit.joints().size());
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("arrangements")
    void everyAnodeOfASoundBoatGivesCurrent(Boat boat) {
        BoatCircuit circuit = ProtectionBoats.circuit(boat, ProtectionBoats.sea(ShorePower.NONE), JULY);
        CircuitState state = CircuitSolver.solve(circuit.circuit());
        for (BoatBody anode : circuit.anodes()) {
            assertTrue(state.body(anode.id()).currentA() > 0, anode.id());
        }
    }

    @Test
    void aSaildriveInTheSeaIsTheLegOfTheReferenceCase() {
        // Case 03 of the stored circuits: leg -0.971 V, anode 50 mA, with a bronze of free potential -0.25 instead of
        // -0.32 V.
        BoatCircuit circuit = ProtectionBoats.circuit(
                ProtectionBoats.saildrive(), ProtectionBoats.sea(ShorePower.NONE), JULY.painted(0));
        CircuitState state = CircuitSolver.solve(circuit.circuit());
        assertEquals(-0.97, state.body("main/leg").interfaceV(), 0.01);
        assertEquals(0.05, state.body("main/leg-anode").currentA(), 0.005);
        assertInstanceOf(Link.OpenJoint.class, circuit.circuit().link("main/leg~main/engine"));
    }

    @Test
    void theShoreEarthIsBuiltAsTheBerthSays() {
        assertInstanceOf(Link.Resistor.class, shore(ShorePower.EARTHED, JULY));
        assertInstanceOf(Link.Isolator.class, shore(ShorePower.GALVANIC_ISOLATOR, JULY));
        assertInstanceOf(Link.OpenJoint.class, shore(ShorePower.ISOLATION_TRANSFORMER, JULY));
        assertInstanceOf(Link.OpenJoint.class, shore(ShorePower.EARTHED, JULY.withShoreLead(false)));
        assertInstanceOf(Link.OpenJoint.class, shore(ShorePower.EARTHED, JULY.underWay()));
    }

    private static Link shore(ShorePower power, CircuitCondition condition) {
        return ProtectionBoats.circuit(ProtectionBoats.twinSterndrive(), ProtectionBoats.sea(power), condition)
                .circuit()
                .link("shore-lead");
    }

    @Test
    void registeredBondsLeadAndAMeasuredLeakOverAForbiddenOneIsALink() {
        Bond leak = new Bond(new PartRef("main", "leg"), new PartRef("main", "engine"), 50.0, true);
        Boat boat = ProtectionBoats.boat(
                HullMaterial.GRP,
                List.of(leak),
                ProtectionBoats.saildrive().installations().get(0));
        BoatCircuit circuit = ProtectionBoats.circuit(boat, ProtectionBoats.sea(ShorePower.NONE), JULY);
        BoatJoint joint = circuit.joint("main/leg~main/engine");
        assertEquals(BoatJoint.Kind.ISOLATION, joint.kind());
        assertTrue(joint.registered());
        assertEquals(50, assertInstanceOf(Link.Resistor.class, joint.link()).ohm());
    }

    @Test
    void everyAssumedFigureIsListedAndCanBeOverridden() {
        Boat boat = ProtectionBoats.twinSterndrive();
        BoatCircuit before = ProtectionBoats.circuit(boat, ProtectionBoats.sea(ShorePower.EARTHED), JULY);
        Assumption area = before.assumptions().stream()
                .filter(a -> a.key().equals("port/propeller.area-m2"))
                .findFirst()
                .orElseThrow();
        assertTrue(area.source().line().length() > 10);
        BoatCircuit after = ProtectionBoats.circuit(
                boat,
                ProtectionBoats.sea(ShorePower.EARTHED),
                JULY.with(Map.of("port/propeller.area-m2", 0.2, "shore-lead.ohm", 0.5)));
        assertEquals(0.2, after.circuit().body("port/propeller").areaM2());
        assertTrue(after.assumptions().stream()
                .anyMatch(a -> a.key().equals("shore-lead.ohm") && a.overridden() && a.value() == 0.5));
    }

    @Test
    void aSlipInAnOverrideIsNotPassedOver() {
        refused(
                () -> ProtectionBoats.circuit(
                        ProtectionBoats.saildrive(),
                        ProtectionBoats.sea(ShorePower.NONE),
                        JULY.with(Map.of("main/leg.area", 1.0))),
                "did you mean \"main/leg.area-m2\"?");
    }

    @Test
    void rawWaterRunsFromTheEngineToTheInsideOfTheLegAndFromThereToTheSea() {
        BoatCircuit circuit =
                ProtectionBoats.circuit(ProtectionBoats.saildrive(), ProtectionBoats.sea(ShorePower.NONE), JULY);
        double hose = figure(circuit, "main/engine.raw-water-ohm");
        double passage = figure(circuit, "main/leg.passage-ohm");
        assertEquals(hose + passage, circuit.circuit().body("main/engine").waterOhm(), 1e-12);
        assertEquals(passage, circuit.circuit().body("main/leg.inside").waterOhm(), 1e-12);
        MutualResistance shared = circuit.circuit().mutualResistances().get(0);
        assertEquals(passage, shared.ohm(), 1e-12);
        assertTrue(List.of("main/engine", "main/leg.inside").containsAll(List.of(shared.a(), shared.b())));
    }

    @Test
    void aBridgedIsolationDrivesCurrentThroughTheHoseIntoTheLeg() {
        Bond bridge = new Bond(new PartRef("main", "leg"), new PartRef("main", "engine"), 0.01, true);
        Boat boat = ProtectionBoats.boat(
                HullMaterial.GRP,
                List.of(bridge),
                ProtectionBoats.saildrive().installations().get(0));
        Boat sound = ProtectionBoats.saildrive();
        double bridged = insideV(boat, Map.of());
        assertTrue(bridged > insideV(sound, Map.of()) + 0.01, "the engine's noble or rusty metal loads the inside");
        // A longer hose takes the engine's load off the inside of the leg: the path runs between the two, not to the
        // sea.
        assertTrue(insideV(boat, Map.of("main/engine.raw-water-ohm", 5000.0)) < bridged);
    }

    private static double insideV(Boat boat, Map<String, Double> figures) {
        BoatCircuit circuit = ProtectionBoats.circuit(boat, ProtectionBoats.sea(ShorePower.NONE), JULY.with(figures));
        return CircuitSolver.solve(circuit.circuit()).body("main/leg.inside").interfaceV();
    }

    private static double figure(BoatCircuit circuit, String key) {
        return circuit.assumptions().stream()
                .filter(a -> a.key().equals(key))
                .findFirst()
                .orElseThrow()
                .value();
    }

    @Test
    void aMetalHullCarriesItsFittingsAndItsAnodes() {
        BoatCircuit steel =
                ProtectionBoats.circuit(ProtectionBoats.steel(), ProtectionBoats.sea(ShorePower.NONE), JULY);
        for (String part : List.of("main/engine", "main/rudder", "main/hull-anode")) {
            assertTrue(
                    steel.circuit().links().stream()
                            .anyMatch(l -> List.of(l.a(), l.b()).containsAll(List.of("hull", part))),
                    part);
        }
        CircuitState state = CircuitSolver.solve(steel.circuit());
        assertTrue(state.body("hull").interfaceV() < -0.80, "painted steel under 20 kg of zinc");
        BoatCircuit jet = ProtectionBoats.circuit(ProtectionBoats.jet(), ProtectionBoats.sea(ShorePower.NONE), JULY);
        assertTrue(jet.circuit().links().stream()
                .anyMatch(l -> List.of(l.a(), l.b()).containsAll(List.of("hull", "main/jet-unit"))));
    }

    @Test
    void everyReasonIsSaidAtOnce() {
        Boat boat = ProtectionBoats.boat(
                HullMaterial.GRP,
                List.of(),
                ProtectionBoats.installation(
                        "main",
                        Arrangement.SAILDRIVE,
                        Cooling.RAW_WATER,
                        ProtectionBoats.part("leg", "aluminium-casting", -0.45, null),
                        ProtectionBoats.part("propeller", "bronce", 0.1, null)));
        UnusableRegisterException e = assertThrows(
                UnusableRegisterException.class,
                () -> ProtectionBoats.circuit(
                        boat,
                        ProtectionBoats.berth(new Water(null, null, List.of()), ShorePower.NONE),
                        JULY.with(Map.of("main/leg.area", 1.0))));
        assertEquals(
                List.of("BERTH", "BOAT", "BOAT", "FIGURE"),
                e.problems().stream().map(p -> p.about().name()).sorted().toList());
        assertTrue(String.valueOf(e.getMessage()).contains("Did you mean \"bronze\"?"), e.getMessage());
    }

    @Test
    void partsAreCalledAsOneSaysThem() {
        BoatCircuit twin =
                ProtectionBoats.circuit(ProtectionBoats.twinSterndrive(), ProtectionBoats.sea(ShorePower.NONE), JULY);
        assertEquals("port leg anode", twin.words("port/leg-anode"));
        assertEquals("joint of the port leg anode", twin.words("port/leg~port/leg-anode"));
        BoatCircuit single =
                ProtectionBoats.circuit(ProtectionBoats.saildrive(), ProtectionBoats.sea(ShorePower.NONE), JULY);
        assertEquals("leg anode", single.words("main/leg-anode"));
    }

    @Test
    void noWaterNoMetalNegativeAreaUnknownAlloy() {
        refused(
                () -> ProtectionBoats.circuit(
                        ProtectionBoats.saildrive(),
                        ProtectionBoats.berth(new Water(null, null, List.of()), ShorePower.NONE),
                        JULY),
                "neither salinity nor resistivity");
        Boat dry = ProtectionBoats.boat(
                HullMaterial.GRP,
                List.of(),
                ProtectionBoats.installation("main", Arrangement.SHAFT, Cooling.KEEL, ProtectionBoats.part("engine")));
        refused(
                () -> ProtectionBoats.circuit(dry, ProtectionBoats.sea(ShorePower.NONE), JULY),
                "no metal in the water");
        Boat negative = ProtectionBoats.boat(
                HullMaterial.GRP,
                List.of(),
                ProtectionBoats.installation(
                        "main",
                        Arrangement.SAILDRIVE,
                        Cooling.RAW_WATER,
                        ProtectionBoats.part("leg", "aluminium-casting", -0.45, null)));
        refused(
                () -> ProtectionBoats.circuit(negative, ProtectionBoats.sea(ShorePower.NONE), JULY),
                "main/leg is -0.45");
        Boat unknown = ProtectionBoats.boat(
                HullMaterial.GRP,
                List.of(),
                ProtectionBoats.installation(
                        "main",
                        Arrangement.SAILDRIVE,
                        Cooling.RAW_WATER,
                        ProtectionBoats.part("leg", "unobtainium", 0.45, null)));
        refused(() -> ProtectionBoats.circuit(unknown, ProtectionBoats.sea(ShorePower.NONE), JULY), "unobtainium");
    }

    private static void refused(org.junit.jupiter.api.function.Executable build, String words) {
        IllegalArgumentException e = assertThrows(IllegalArgumentException.class, build);
        assertTrue(String.valueOf(e.getMessage()).contains(words), e.getMessage());
    }
}

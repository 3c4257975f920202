package sternwright.protection.solver;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import sternwright.protection.circuit.Body;
import sternwright.protection.circuit.Circuit;
import sternwright.protection.circuit.CurrentSource;
import sternwright.protection.circuit.IllPosedCircuitException;
import sternwright.protection.circuit.Link;
import sternwright.protection.circuit.MutualResistance;
import sternwright.protection.circuit.Reaction;

/** Circuits without an answer are refused with every reason, in words. */
class IllPosedCircuitTest {
    private static final Circuit BOAT = ReferenceCase.named("03-leg-protected").circuit();

    private static void refused(Circuit circuit, String... words) {
        IllPosedCircuitException e = assertThrows(IllPosedCircuitException.class, () -> CircuitSolver.solve(circuit));
        for (String word : words) {
            assertTrue(String.valueOf(e.getMessage()).contains(word), e.getMessage() + " should say " + word);
        }
    }

    @Test
    void negativeAreaAndNotANumber() {
        refused(BOAT.withBody("leg", b -> b.withAreaM2(-0.4)), "body leg", "area is -0.4");
        refused(BOAT.withBody("leg", b -> b.withAreaM2(Double.NaN)), "body leg", "area is NaN");
        refused(BOAT.withBody("leg", b -> b.withWaterOhm(Double.POSITIVE_INFINITY)), "remote water");
        refused(BOAT.withBody("leg", b -> b.withBareFraction(5)), "bare share is 5.0");
        refused(BOAT.withLink(new Link.Resistor("anode-bolt", "leg", "leg-anode", -1)), "link anode-bolt", "-1.0");
    }

    @Test
    void everyReasonIsGivenAtOnce() {
        Circuit twice = BOAT.withBody("leg", b -> b.withAreaM2(-1)).withBody("propeller", b -> b.withAreaM2(-2));
        IllPosedCircuitException e = assertThrows(IllPosedCircuitException.class, () -> CircuitSolver.solve(twice));
        assertEquals(2, e.problems().size());
    }

    @Test
    void potentialsThatLookLikeMillivoltsAreSaid() {
        Body odd = new Body("odd", "zinc", 1, 1, 1, List.of(Reaction.anodic(-1050, 0.1, 0.04)));
        refused(BOAT.plusBody(odd), "were these millivolts?");
    }

    @Test
    void aGroupWithNoPathToWater() {
        Circuit dry = BOAT.plusBody(new Body("radio earth", "copper", 0, 1, 0, List.of()));
        refused(dry, "radio earth", "no path to water");
        CircuitState wired = CircuitSolver.solve(dry.withLink(new Link.Resistor("wire", "radio earth", "leg", 0.1)));
        assertEquals(wired.body("leg").metalV(), wired.body("radio earth").metalV(), 1e-12);
    }

    @Test
    void noMetalAtAll() {
        refused(new Circuit(List.of(), List.of()), "no body of metal");
    }

    @Test
    void metalThatCanOnlyGiveCurrent() {
        Body only = new Body("lonely", "pure-anodic", 1, 1, 1, List.of(Reaction.anodic(-0.7, 0.01, 0.06)));
        refused(BOAT.plusBody(only), "lonely", "take up the current");
        Body limited = new Body(
                "small",
                "x",
                1,
                1,
                1,
                List.of(Reaction.cathodic(-0.7, 0.01, 0.06, 0.1), Reaction.anodic(-0.7, 0.01, 0.06)));
        refused(
                BOAT.plusBody(limited).plusSource(new CurrentSource("leak", "small", "leg", 0.5)),
                "small",
                "at most 0.1 A");
    }

    @Test
    void unknownAndDoubleNames() {
        refused(BOAT.withLink(new Link.Resistor("w", "leg", "rudder", 1)), "no body \"rudder\"", "leg, propeller");
        refused(BOAT.plusBody(BOAT.body("leg")), "used twice");
        refused(BOAT.withLink(new Link.Resistor("w", "leg", "leg", 1)), "both ends");
    }

    @Test
    void sharedWaterThatNoWaterCanHave() {
        Circuit impossible = new Circuit(
                BOAT.bodies(), BOAT.links(), List.of(), List.of(new MutualResistance("leg", "propeller", 5)));
        refused(impossible, "mutual resistance leg to propeller", "geometric mean");
    }
}

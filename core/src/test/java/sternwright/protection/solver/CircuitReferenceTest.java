package sternwright.protection.solver;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Stored circuits, solved by ngspice 39 and again by an independent damped Newton method: source, equations and tolerance (1e-6 V, 1e-5 of each current,
 * not below 1e-8 A) in reference/protection/README.md among the test resources.
 */
class CircuitReferenceTest {
    static List<ReferenceCase> cases() {
        return ReferenceCase.all();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void agreesWithTheStoredAnswer(ReferenceCase stored) {
        CircuitState state = CircuitSolver.solve(stored.circuit());
        potentials(stored.figures("metalPotentialV"), id -> state.body(id).metalV());
        potentials(stored.figures("interfacePotentialV"), id -> state.body(id).interfaceV());
        currents(stored.figures("bodyCurrentA"), id -> state.body(id).currentA());
        currents(stored.figures("anodicPartialCurrentA"), id -> state.body(id).anodicCurrentA());
        currents(stored.figures("linkCurrentA"), state::linkCurrentA);
        assertTrue(state.residualA() < 1e-9, "residual " + state.residualA());
    }

    @Test
    void agreesWithTheClosedFormOfTwoTafelLines() {
        CircuitState state =
                CircuitSolver.solve(ReferenceCase.named("01-couple-closed-form").circuit());
        double e = (-0.7 / 0.06 + -0.2 / 0.12 + Math.log10(0.001 * 0.005 / (0.01 * 0.001))) / (1 / 0.06 + 1 / 0.12);
        double current = 0.01 * 0.001 * Math.pow(10, (e + 0.7) / 0.06);
        assertEquals(e, state.body("cathode").interfaceV(), 1e-8);
        assertEquals(current, state.body("anode").currentA(), 1e-6 * current);
    }

    private static void potentials(Map<String, Double> expected, ToDoubleFunction<String> actual) {
        expected.forEach((id, v) -> assertEquals(v, actual.applyAsDouble(id), 1e-6, id));
    }

    private static void currents(Map<String, Double> expected, ToDoubleFunction<String> actual) {
        expected.forEach((id, a) -> assertEquals(a, actual.applyAsDouble(id), Math.max(1e-8, 1e-5 * Math.abs(a)), id));
    }
}

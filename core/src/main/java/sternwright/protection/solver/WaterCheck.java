package sternwright.protection.solver;

import java.util.List;
import sternwright.protection.circuit.Circuit;
import sternwright.protection.circuit.CircuitProblem;
import sternwright.protection.circuit.IllPosedCircuitException;

/**
 * Refuses mutual water resistances that no water can have: a matrix of resistances that is not positive semidefinite would give energy
 * away, and the circuit more than one answer.
 */
final class WaterCheck {
    private WaterCheck() {}

    static void require(Circuit circuit, Network network) {
        if (network.mutualOhm.length == 0) {
            return;
        }
        SymmetricMatrix pattern = new SymmetricMatrix(network.bodies(), network.mutualA, network.mutualB);
        Factor factor = new Factor(pattern);
        double largest = 0;
        for (double r : network.waterOhm) {
            largest = Math.max(largest, r);
        }
        for (int b = 0; b < network.bodies(); b++) {
            factor.diagonal[pattern.place[b]] = network.waterOhm[b] + 1e-9 * largest + Double.MIN_NORMAL;
        }
        for (int m = 0; m < network.mutualOhm.length; m++) {
            double own = Math.sqrt(network.waterOhm[network.mutualA[m]] * network.waterOhm[network.mutualB[m]]);
            if (network.mutualOhm[m] > own * (1 + 1e-9)) {
                refuse(
                        "mutual resistance "
                                + circuit.mutualResistances().get(m).a() + " to "
                                + circuit.mutualResistances().get(m).b(),
                        network.mutualOhm[m] + " ohm is more than the two bodies' own resistances allow (" + own
                                + " ohm, their geometric mean)");
            }
            factor.upper[pattern.entry(network.mutualA[m], network.mutualB[m])] = network.mutualOhm[m];
        }
        if (!factor.factorise() || factor.lowestPivot() <= 0) {
            refuse(
                    "mutual resistances",
                    "taken together they are not possible in any water (not positive semidefinite)");
        }
    }

    private static void refuse(String where, String what) {
        throw new IllPosedCircuitException(List.of(new CircuitProblem(
                where, what, "Check the distances; two bodies cannot share more path than each has")));
    }
}

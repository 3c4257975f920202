package sternwright.protection.diagnosis;

import sternwright.protection.anode.Demand;
import sternwright.protection.circuit.Circuit;
import sternwright.protection.circuit.MutualResistance;
import sternwright.protection.register.BoatCircuit;

/**
 * What is not known even of a sound boat: oxygen demand, bare share of the paint, resistance of the water paths (logarithms, normal), and an offset of the
 * half cell (volts, normal).
 */
final class Unknowns {
    /** Number of unknowns that change the circuit. */
    static final int IN_CIRCUIT = 3;

    /** All of them. */
    static final int ALL = 4;

    /** Standard deviations: demand, paint, water, half cell. From memory; demand and potentials as in the lumped-model limits of the package. */
    static final double[] SPREAD = {0.40, 0.40, 0.20, 0.005};

    private Unknowns() {}

    /** The circuit with unknowns at given values; the half cell's offset does not act on it. */
    static Circuit at(BoatCircuit boat, double[] values) {
        Circuit c = values[0] == 0 ? boat.circuit() : Demand.times(boat, Math.exp(values[0]));
        if (values[1] != 0) {
            double factor = Math.exp(values[1]);
            for (var b : boat.bodies()) {
                if (b.coatedShare() > 0) {
                    c = c.withBody(b.id(), x -> x.withBareFraction(Math.min(1, x.bareFraction() * factor)));
                }
            }
        }
        if (values[2] != 0) {
            double factor = Math.exp(values[2]);
            Circuit scaled = c.withBodies(b -> b.withWaterOhm(b.waterOhm() * factor));
            c = new Circuit(
                    scaled.bodies(),
                    scaled.links(),
                    scaled.sources(),
                    scaled.mutualResistances().stream()
                            .map(m -> new MutualResistance(m.a(), m.b(), m.ohm() * factor))
                            .toList());
        }
        return c;
    }
}

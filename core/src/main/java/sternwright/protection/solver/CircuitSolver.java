package sternwright.protection.solver;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import sternwright.protection.circuit.Circuit;
import sternwright.protection.circuit.CircuitCheck;
import sternwright.protection.circuit.CircuitProblem;
import sternwright.protection.circuit.IllPosedCircuitException;
import sternwright.protection.circuit.Link;

/**
 * Finds the one state of a protection circuit. Made once for a circuit, it may be asked many times and by several threads.
 */
public final class CircuitSolver {
    private static final int PATIENCE = 30;
    private static final int MOST_STEPS = 400;

    private final Circuit circuit;
    private final Network network;
    private final Map<String, Integer> linkIndex;
    private final boolean anyMerged;

    /**
     * Prepares a circuit for solving.
     *
     * @throws IllPosedCircuitException with every reason, where the circuit has no answer
     */
    public CircuitSolver(Circuit circuit) {
        CircuitCheck.require(circuit);
        this.circuit = circuit;
        network = new Network(circuit);
        WaterCheck.require(circuit, network);
        List<Link> links = circuit.links();
        linkIndex = new HashMap<>(2 * links.size());
        links.forEach(l -> linkIndex.put(l.id(), linkIndex.size()));
        anyMerged = links.stream().anyMatch(Network::merges);
    }

    private CircuitSolver(CircuitSolver same, Network network) {
        circuit = same.circuit;
        this.network = network;
        linkIndex = same.linkIndex;
        anyMerged = same.anyMerged;
    }

    /**
     * The same bodies, curves and joints with other areas and water resistances, in the order of the circuit: shares all preparation, for
     * stepping through time.
     *
     * @param bareAreaM2 bare areas, m2; above zero for bodies that are wet
     * @param waterOhm resistances to remote water, ohm
     * @param mutualScale factor on the mutual resistances
     */
    public CircuitSolver adjusted(double[] bareAreaM2, double[] waterOhm, double mutualScale) {
        for (int b = 0; b < network.bodies(); b++) {
            boolean area = bareAreaM2[b] > 0 || !network.curves.wet(b);
            if (!area || !(waterOhm[b] >= 0) || !Double.isFinite(bareAreaM2[b]) || !Double.isFinite(waterOhm[b])) {
                throw new IllPosedCircuitException(List.of(new CircuitProblem(
                        "body " + circuit.bodies().get(b).id(),
                        "bare area " + bareAreaM2[b] + " m2 and resistance " + waterOhm[b] + " ohm cannot be used",
                        "Give an area above zero and a resistance of zero or more")));
            }
        }
        return new CircuitSolver(this, network.with(bareAreaM2.clone(), waterOhm.clone(), mutualScale));
    }

    /** Solves a circuit once, from a cold start. */
    public static CircuitState solve(Circuit circuit) {
        return new CircuitSolver(circuit).solve();
    }

    /** The circuit that this solver answers for; for an adjusted one that it was adjusted from. */
    public Circuit circuit() {
        return circuit;
    }

    /** Solves from a cold start. */
    public CircuitState solve() {
        return run(null);
    }

    /**
     * Solves from a state of this circuit, or of one with the same bodies in the same order: quicker where little has changed. The answer is the same.
     */
    public CircuitState solve(CircuitState start) {
        return run(start);
    }

    private CircuitState run(@Nullable CircuitState start) {
        Newton newton = new Newton(network);
        if (start != null) {
            warm(newton, start);
            if (newton.run(PATIENCE)) {
                return state(newton);
            }
            // The other circuit lay too far away to help.
            newton = new Newton(network);
        }
        ColdStart.set(network, newton.v);
        if (!newton.run(MOST_STEPS)) {
            throw new IllPosedCircuitException(List.of(new CircuitProblem(
                    "circuit",
                    "the solution did not settle within " + MOST_STEPS + " steps, imbalance " + newton.residualA()
                            + " A",
                    "Look for values far outside what metal in water can have")));
        }
        return state(newton);
    }

    private void warm(Newton newton, CircuitState start) {
        for (int b = 0; b < network.bodies(); b++) {
            newton.v[network.node[b]] = start.metalV(b);
        }
        for (int b = 0; b < network.bodies(); b++) {
            newton.j[b] = startCurrentA(b, start, newton.v[network.node[b]]);
        }
    }

    /**
     * A current to start from that keeps the interface where it was: potentials carry over from circuit to circuit where resistances have
     * changed, currents do not.
     */
    private double startCurrentA(int body, CircuitState start, double metalV) {
        if (network.currentUnknown[body] >= 0 || network.waterOhm[body] == 0) {
            return network.currentUnknown[body] >= 0 ? 0 : start.currentA(body);
        }
        return (metalV - start.interfaceV(body)) / network.waterOhm[body];
    }

    private CircuitState state(Newton newton) {
        int n = network.bodies();
        double[] metal = new double[n];
        for (int b = 0; b < n; b++) {
            metal[b] = newton.v[network.node[b]];
        }
        return new CircuitState(
                network.bodyIndex,
                linkIndex,
                metal,
                newton.e,
                newton.i,
                newton.anodic,
                linkCurrents(metal, newton.i),
                newton.residualA(),
                newton.steps);
    }

    private double[] linkCurrents(double[] metal, double[] bodyA) {
        List<Link> links = circuit.links();
        double[] current = new double[links.size()];
        for (int l = 0; l < current.length; l++) {
            double across = metal[network.linkFrom[l]] - metal[network.linkTo[l]];
            if (links.get(l) instanceof Link.Isolator i) {
                IsolatorCurve curve = new IsolatorCurve(i);
                curve.at(across);
                current[l] = curve.currentA();
            } else if (links.get(l) instanceof Link.Resistor r && !Network.merges(r)) {
                current[l] = across / r.ohm();
            }
        }
        if (anyMerged) {
            mergedCurrents(links, bodyA, current);
        }
        return current;
    }

    private void mergedCurrents(List<Link> links, double[] bodyA, double[] current) {
        boolean[] joint = new boolean[links.size()];
        double[] ohm = new double[links.size()];
        double[] injected = new double[bodyA.length];
        for (int b = 0; b < bodyA.length; b++) {
            injected[b] = -bodyA[b];
        }
        for (int l = 0; l < joint.length; l++) {
            if (links.get(l) instanceof Link.Resistor r && Network.merges(r)) {
                joint[l] = true;
                ohm[l] = r.ohm();
            } else {
                injected[network.linkFrom[l]] -= current[l];
                injected[network.linkTo[l]] += current[l];
            }
        }
        circuit.sources().forEach(s -> {
            injected[index(s.from())] -= s.currentA();
            injected[index(s.to())] += s.currentA();
        });
        MergedJoints.currents(network, joint, ohm, injected, current);
    }

    private int index(String body) {
        return Objects.requireNonNull(network.bodyIndex.get(body));
    }
}

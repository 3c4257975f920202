package sternwright.protection.report;

import java.util.List;
import sternwright.protection.circuit.Link;
import sternwright.protection.register.BoatCircuit;
import sternwright.protection.register.BoatJoint;
import sternwright.protection.solver.CircuitState;

/**
 * One joint of the boat at the berth.
 *
 * @param joint the joint
 * @param ohm its resistance; not a number for an open joint and an isolator
 * @param acrossV voltage across it, V, zero or more
 * @param currentA current through it, A, zero or more
 */
public record JointLine(BoatJoint joint, double ohm, double acrossV, double currentA) {
    /** Every joint of a solved boat, in the order of the circuit. */
    public static List<JointLine> of(BoatCircuit boat, CircuitState state) {
        return boat.joints().stream().map(j -> of(j, state)).toList();
    }

    private static JointLine of(BoatJoint joint, CircuitState state) {
        Link l = joint.link();
        double across = Math.abs(state.body(l.a()).metalV() - state.body(l.b()).metalV());
        double current = l.conducts() ? Math.abs(state.linkCurrentA(l.id())) : 0;
        return new JointLine(joint, l instanceof Link.Resistor r ? r.ohm() : Double.NaN, across, current);
    }
}

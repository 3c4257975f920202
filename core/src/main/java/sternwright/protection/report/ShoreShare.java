package sternwright.protection.report;

import sternwright.protection.circuit.Circuit;
import sternwright.protection.circuit.Link;
import sternwright.protection.register.BoatBody;
import sternwright.protection.register.BoatCircuit;
import sternwright.protection.register.BoatJoint;
import sternwright.protection.solver.CircuitSolver;
import sternwright.protection.solver.CircuitState;

/** How much of what a boat's anodes give goes ashore over the earth of the shore lead. */
final class ShoreShare {
    private ShoreShare() {}

    /** Share of the anodes' current that they would not give with the shore earth open, 0 to 1. */
    static double of(BoatCircuit boat) {
        Circuit apart = boat.circuit();
        for (BoatJoint j : boat.joints()) {
            if (j.kind() == BoatJoint.Kind.SHORE_EARTH) {
                Link l = j.link();
                apart = apart.withLink(new Link.OpenJoint(l.id(), l.a(), l.b()));
            }
        }
        double with = given(boat, CircuitSolver.solve(boat.circuit()));
        double without = given(boat, CircuitSolver.solve(apart));
        return with > 0 ? Math.max(0, 1 - without / with) : 0;
    }

    private static double given(BoatCircuit boat, CircuitState state) {
        return boat.anodes().stream()
                .map(BoatBody::id)
                .mapToDouble(id -> Math.max(0, state.body(id).currentA()))
                .sum();
    }
}

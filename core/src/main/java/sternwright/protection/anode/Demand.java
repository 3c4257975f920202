package sternwright.protection.anode;

import java.util.HashSet;
import java.util.Set;
import sternwright.protection.circuit.Body;
import sternwright.protection.circuit.Circuit;
import sternwright.protection.circuit.Reaction;
import sternwright.protection.register.BoatBody;
import sternwright.protection.register.BoatCircuit;

/** Scales the oxygen limits on board: demand is set by oxygen, so this is the knob that fits computed to weighed wastage. */
public final class Demand {
    private Demand() {}

    /** The circuit with every oxygen limit of the boat's own metal multiplied. */
    public static Circuit times(BoatCircuit boat, double factor) {
        Set<String> ashore = new HashSet<>();
        for (BoatBody b : boat.bodies()) {
            if (!b.onBoard()) {
                ashore.add(b.id());
            }
        }
        return boat.circuit().withBodies(b -> ashore.contains(b.id()) ? b : times(b, factor));
    }

    private static Body times(Body body, double factor) {
        return body.withMetal(
                body.material(),
                body.reactions().stream()
                        .map(r -> r.kind() == Reaction.Kind.CATHODIC && r.limitAPerM2() != Reaction.NO_LIMIT
                                ? r.withLimitTimes(factor)
                                : r)
                        .toList());
    }
}

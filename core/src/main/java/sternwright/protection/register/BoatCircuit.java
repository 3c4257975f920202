package sternwright.protection.register;

import java.util.List;
import java.util.Optional;
import sternwright.boat.PartRef;
import sternwright.protection.circuit.Circuit;

/**
 * The circuit of a boat with what its bodies and links are.
 *
 * @param circuit the circuit
 * @param water the water it lies in
 * @param condition what it was built for
 * @param bodies what the bodies are, in the order of the circuit
 * @param joints what the links are, in the order of the circuit
 * @param assumptions every figure that the register did not give
 * @param hotMarina whether the berth is known for anodes that go unusually fast
 */
public record BoatCircuit(
        Circuit circuit,
        BerthWater water,
        CircuitCondition condition,
        List<BoatBody> bodies,
        List<BoatJoint> joints,
        List<Assumption> assumptions,
        boolean hotMarina) {
    public BoatCircuit {
        bodies = List.copyOf(bodies);
        joints = List.copyOf(joints);
        assumptions = List.copyOf(assumptions);
    }

    /** What a body is; fails for an unknown name. */
    public BoatBody body(String id) {
        return bodies.stream()
                .filter(b -> b.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no body \"" + id + "\" in this boat's circuit"));
    }

    /** The body of a part, if it has one. */
    public Optional<BoatBody> body(PartRef ref) {
        return bodies.stream().filter(b -> ref.equals(b.ref())).findFirst();
    }

    /** A body or joint as one says it; the name itself where the circuit has none of it. */
    public String words(String where) {
        for (BoatBody b : bodies) {
            if (b.id().equals(where)) {
                return b.name();
            }
        }
        for (BoatJoint j : joints) {
            if (j.link().id().equals(where)) {
                return j.name();
            }
        }
        return where;
    }

    /** What a link is; fails for an unknown name. */
    public BoatJoint joint(String id) {
        return joints.stream()
                .filter(j -> j.link().id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no joint \"" + id + "\" in this boat's circuit"));
    }

    /** The sacrificial anodes. */
    public List<BoatBody> anodes() {
        return bodies.stream().filter(BoatBody::anode).toList();
    }

    /** The same boat with another circuit of the same bodies and links, such as one with a fault. */
    public BoatCircuit with(Circuit changed) {
        return new BoatCircuit(changed, water, condition, bodies, joints, assumptions, hotMarina);
    }
}

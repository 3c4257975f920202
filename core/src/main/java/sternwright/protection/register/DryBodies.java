package sternwright.protection.register;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import sternwright.protection.circuit.Body;
import sternwright.protection.circuit.Circuit;
import sternwright.protection.circuit.Link;

/** Leaves out dry engines that nothing joins to wet metal: they take no part. */
final class DryBodies {
    private DryBodies() {}

    static Circuit without(Circuit circuit) {
        Set<String> floating = floating(circuit);
        return new Circuit(
                circuit.bodies().stream()
                        .filter(b -> !floating.contains(b.id()))
                        .toList(),
                circuit.links().stream()
                        .filter(l -> !floating.contains(l.a()) && !floating.contains(l.b()))
                        .toList(),
                circuit.sources(),
                circuit.mutualResistances());
    }

    static List<BoatBody> kept(Circuit circuit, List<BoatBody> bodies) {
        Set<String> floating = floating(circuit);
        return bodies.stream().filter(b -> !floating.contains(b.id())).toList();
    }

    private static Set<String> floating(Circuit circuit) {
        Set<String> reached = new HashSet<>();
        circuit.bodies().stream().filter(Body::wet).forEach(b -> reached.add(b.id()));
        boolean grown = true;
        while (grown) {
            grown = false;
            for (Link l : circuit.links()) {
                if (l.conducts() && reached.contains(l.a()) != reached.contains(l.b())) {
                    reached.add(l.a());
                    reached.add(l.b());
                    grown = true;
                }
            }
        }
        Set<String> floating = new HashSet<>();
        circuit.bodies().stream()
                .map(Body::id)
                .filter(id -> !reached.contains(id))
                .forEach(floating::add);
        return floating;
    }
}

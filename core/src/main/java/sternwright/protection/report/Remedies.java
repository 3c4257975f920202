package sternwright.protection.report;

import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import sternwright.protection.circuit.Body;
import sternwright.protection.circuit.Circuit;
import sternwright.protection.circuit.Link;
import sternwright.protection.judgement.PotentialJudge;
import sternwright.protection.judgement.Protection;
import sternwright.protection.metal.Metal;
import sternwright.protection.register.BoatBody;
import sternwright.protection.register.BoatCircuit;
import sternwright.protection.register.BoatJoint;
import sternwright.protection.solver.CircuitSolver;
import sternwright.protection.solver.CircuitState;
import sternwright.protection.water.WaterResistance;

/** Solves the boat once more with each remedy at hand and says which is the least that protects a part. */
final class Remedies {
    /** What can be done, the least first. */
    enum Kind {
        /** Break the direct current over the shore earth. */
        SHORE_EARTH,
        /** Anodes of the alloy that suits the water. */
        ALLOY,
        /** Both of them. */
        ALLOY_AND_SHORE_EARTH,
        /** Twice the anode. */
        TWICE,
        /** Four times the anode. */
        FOUR_TIMES
    }

    /**
     * A remedy and what it does to a part.
     *
     * @param kind the remedy
     * @param potentialV potential of the part with it, V
     */
    record Remedy(Kind kind, double potentialV) {}

    private static final int MOST_HULL_ANODES = 16;
    private static final double ANODE_BOLT_OHM = 0.002;

    private final BoatCircuit boat;
    private final Metal alloy;
    private final Map<Kind, CircuitState> solved = new EnumMap<>(Kind.class);

    Remedies(BoatCircuit boat, Metal alloy) {
        this.boat = boat;
        this.alloy = alloy;
        for (Kind kind : Kind.values()) {
            if (makesSense(kind)) {
                solved.put(kind, CircuitSolver.solve(with(kind)));
            }
        }
    }

    private boolean makesSense(Kind kind) {
        boolean other = boat.anodes().stream().anyMatch(a -> !a.metal().id().equals(alloy.id()));
        return switch (kind) {
            case SHORE_EARTH -> earthed();
            case ALLOY -> other;
            case ALLOY_AND_SHORE_EARTH -> other && earthed();
            case TWICE, FOUR_TIMES -> !boat.anodes().isEmpty();
        };
    }

    /** Whether the shore earth carries direct current freely. */
    private boolean earthed() {
        return boat.joints().stream()
                .anyMatch(j -> j.kind() == BoatJoint.Kind.SHORE_EARTH && j.link() instanceof Link.Resistor);
    }

    /** The least remedy that brings a part within its limits; empty if none does. */
    Optional<Remedy> leastFor(BoatBody part) {
        for (var e : solved.entrySet()) {
            double v = e.getValue().body(part.id()).interfaceV();
            Protection state =
                    PotentialJudge.judge(part.metal(), v, boat.water().fresh()).state();
            if (state == Protection.PROTECTED) {
                return Optional.of(new Remedy(e.getKey(), v));
            }
        }
        return Optional.empty();
    }

    /**
     * How many hull anodes on a metal hull itself bring it within its limits.
     *
     * @param hull the hull
     * @param areaM2 bare area of each
     * @return 1 to 16; empty if more would be needed
     */
    Optional<Integer> hullAnodes(BoatBody hull, double areaM2) {
        double ohm = WaterResistance.compact(boat.water().resistivityOhmM(), areaM2);
        for (int n = 1; n <= MOST_HULL_ANODES; n++) {
            Body anodes = new Body(
                    "more-hull-anodes",
                    alloy.id(),
                    n * areaM2,
                    1,
                    ohm / n,
                    alloy.curve(boat.water().fresh(), 1));
            Circuit more = boat.circuit()
                    .plusBody(anodes)
                    .withLink(new Link.Resistor("more-hull-anodes", hull.id(), anodes.id(), ANODE_BOLT_OHM / n));
            double v = CircuitSolver.solve(more).body(hull.id()).interfaceV();
            if (PotentialJudge.judge(hull.metal(), v, boat.water().fresh()).state() == Protection.PROTECTED) {
                return Optional.of(n);
            }
        }
        return Optional.empty();
    }

    /** Whether any anode is joined to a part in metal. */
    boolean anodeOn(BoatBody part) {
        Set<String> reached = new HashSet<>(Set.of(part.id()));
        boolean grown = true;
        while (grown) {
            grown = false;
            for (Link l : boat.circuit().links()) {
                boolean ashore = l.a().equals("marina") || l.b().equals("marina");
                if (l.conducts() && !ashore && reached.contains(l.a()) != reached.contains(l.b())) {
                    reached.addAll(List.of(l.a(), l.b()));
                    grown = true;
                }
            }
        }
        return boat.anodes().stream().anyMatch(a -> reached.contains(a.id()));
    }

    private Circuit with(Kind kind) {
        return switch (kind) {
            case SHORE_EARTH -> withoutShore(boat.circuit());
            case ALLOY -> withAlloy(boat.circuit());
            case ALLOY_AND_SHORE_EARTH -> withAlloy(withoutShore(boat.circuit()));
            case TWICE -> moreAnode(2);
            case FOUR_TIMES -> moreAnode(4);
        };
    }

    private Circuit withoutShore(Circuit circuit) {
        Circuit c = circuit;
        for (BoatJoint j : boat.joints()) {
            if (j.kind() == BoatJoint.Kind.SHORE_EARTH) {
                c = c.withLink(
                        new Link.OpenJoint(j.link().id(), j.link().a(), j.link().b()));
            }
        }
        return c;
    }

    private Circuit withAlloy(Circuit circuit) {
        Set<String> anodes = ids();
        return circuit.withBodies(b -> anodes.contains(b.id())
                ? b.withMetal(alloy.id(), alloy.curve(boat.water().fresh(), 1))
                : b);
    }

    /** More anodes of the same kind side by side: area and conductance grow together. */
    private Circuit moreAnode(double times) {
        Set<String> anodes = ids();
        Circuit c = boat.circuit();
        return new Circuit(
                        c.bodies(),
                        c.links(),
                        c.sources(),
                        c.mutualResistances().stream()
                                .filter(m -> !anodes.contains(m.a()) && !anodes.contains(m.b()))
                                .toList())
                .withBodies(b -> anodes.contains(b.id())
                        ? b.withAreaM2(b.areaM2() * times).withWaterOhm(b.waterOhm() / times)
                        : b);
    }

    private Set<String> ids() {
        Set<String> anodes = new HashSet<>();
        boat.anodes().forEach(a -> anodes.add(a.id()));
        return anodes;
    }
}

package sternwright.protection.fault;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.UnaryOperator;
import sternwright.protection.circuit.Circuit;
import sternwright.protection.circuit.CurrentSource;
import sternwright.protection.circuit.Link;
import sternwright.protection.circuit.Reaction;
import sternwright.protection.fault.Fault.Variant;
import sternwright.protection.metal.MetalCatalogue;
import sternwright.protection.register.BoatBody;
import sternwright.protection.register.BoatCircuit;
import sternwright.protection.register.BoatJoint;

/** Every single fault that a boat's circuit can have. */
public final class FaultList {
    /** A spent or filmed-over anode: gives 0.05 A/m2 at most. Curve from memory, as in the solved circuits of the reference tests. */
    private static final List<Reaction> SPENT = List.of(
            new Reaction(Reaction.Kind.ANODIC, -0.95, 0.002, 0.08, 0.05),
            Reaction.cathodic(-0.95, 0.01, 0.12, 0.05),
            Reaction.cathodic(-1.3, 0.01, 0.12, Reaction.NO_LIMIT));

    private static final double[] PAINTED_BARE_SHARES = {0.02, 0.002};

    private final BoatCircuit boat;
    private final List<Fault> faults = new ArrayList<>();

    private FaultList(BoatCircuit boat) {
        this.boat = boat;
    }

    /** The faults of a boat. */
    public static List<Fault> of(BoatCircuit boat) {
        FaultList list = new FaultList(boat);
        boat.anodes().forEach(list::anode);
        boat.joints().forEach(list::joint);
        list.paint();
        list.hotBerth();
        list.stray();
        return List.copyOf(list.faults);
    }

    private void anode(BoatBody anode) {
        String id = anode.id();
        add(FaultKind.ANODE_SPENT, id, one(c -> c.withBody(id, b -> b.withMetal(b.material(), SPENT))));
        List<Variant> painted = new ArrayList<>();
        for (double bare : PAINTED_BARE_SHARES) {
            // What is left bare is a pinhole: its resistance to the water goes with one over the root of its area.
            painted.add(new Variant(
                    0.5,
                    c -> c.withBody(id, b -> b.withBareFraction(bare).withWaterOhm(b.waterOhm() / Math.sqrt(bare)))));
        }
        add(FaultKind.ANODE_PAINTED, id, painted);
        if (!anode.metal().id().equals("magnesium-anode") && !boat.water().fresh()) {
            List<Reaction> magnesium =
                    MetalCatalogue.standard().metal("magnesium-anode").curve(false, 1);
            add(FaultKind.WRONG_ANODE, id, one(c -> c.withBody(id, b -> b.withMetal("magnesium-anode", magnesium))));
        }
    }

    private void joint(BoatJoint joint) {
        Link l = joint.link();
        switch (joint.kind()) {
            case ANODE_JOINT -> {
                add(FaultKind.ANODE_LOOSE, l.id(), one(open(l)));
                add(FaultKind.ANODE_JOINT_CORRODED, l.id(), ohms(l, 0.5, 2, 8));
            }
            case BONDING, BATTERY_NEGATIVE -> {
                add(FaultKind.BOND_OPEN, l.id(), one(open(l)));
                add(FaultKind.BOND_CORRODED, l.id(), ohms(l, 0.5, 2, 8));
            }
            case SHAFT_LINE, SHAFT_BRUSH -> add(FaultKind.SHAFT_CONTACT_POOR, l.id(), ohms(l, 0.5, 2, 8));
            case ISOLATION -> {
                add(FaultKind.ISOLATION_BRIDGED, l.id(), ohms(l, 0.01, 0.1, 1));
                add(FaultKind.ISOLATION_LEAKS, l.id(), ohms(l, 10, 50, 250));
            }
            case SHORE_EARTH -> shoreEarth(l);
            case ONE_PIECE -> {}
        }
    }

    private void shoreEarth(Link link) {
        if (link instanceof Link.Isolator i) {
            add(
                    FaultKind.ISOLATOR_SHORT,
                    i.id(),
                    one(c -> c.withLink(new Link.Resistor(i.id(), i.a(), i.b(), i.seriesOhm()))));
        }
        if (link.conducts()) {
            List<Variant> variants = new ArrayList<>();
            for (double amps : new double[] {0.2, 0.6, 2}) {
                variants.add(new Variant(
                        1.0 / 3, c -> c.plusSource(new CurrentSource("shore-stray", link.b(), link.a(), amps))));
                variants.add(new Variant(
                        1.0 / 3, c -> c.plusSource(new CurrentSource("shore-stray", link.a(), link.b(), amps))));
            }
            add(FaultKind.STRAY_FROM_SHORE, link.id(), evenly(variants));
        }
    }

    private void paint() {
        for (BoatBody b : boat.bodies()) {
            if (b.onBoard() && b.coatedShare() > 0.2) {
                List<Variant> variants = new ArrayList<>();
                for (double times : new double[] {3, 6}) {
                    variants.add(new Variant(
                            0.5,
                            c -> c.withBody(b.id(), x -> x.withBareFraction(Math.min(1, x.bareFraction() * times)))));
                }
                add(FaultKind.PAINT_GONE, b.id(), variants);
            }
        }
    }

    private void hotBerth() {
        List<Variant> variants = new ArrayList<>();
        for (double times : new double[] {2, 4}) {
            variants.add(new Variant(
                    0.5,
                    c -> c.withBodies(b -> b.withMetal(
                            b.material(),
                            b.reactions().stream()
                                    .map(r -> r.kind() == Reaction.Kind.CATHODIC && r.limitAPerM2() != Reaction.NO_LIMIT
                                            ? r.withLimitTimes(times)
                                            : r)
                                    .toList()))));
        }
        add(FaultKind.HOT_BERTH, "berth", variants);
    }

    /** Stray current leaves the battery's positive into a part that is not joined to its negative, and comes home through the water. */
    private void stray() {
        Map<String, String> group = groups(boat.circuit());
        String earth = boat.bodies().stream()
                .filter(b -> b.kind().equals("engine"))
                .map(BoatBody::id)
                .findFirst()
                .orElse("");
        if (earth.isEmpty()) {
            return;
        }
        Map<String, String> seen = new HashMap<>();
        for (BoatBody b : boat.bodies()) {
            String g = group.getOrDefault(b.id(), b.id());
            if (b.reachable() && !b.anode() && !g.equals(group.get(earth)) && seen.putIfAbsent(g, b.id()) == null) {
                List<Variant> variants = new ArrayList<>();
                for (double amps : new double[] {0.1, 0.4, 1.5}) {
                    variants.add(new Variant(
                            1.0 / 3, c -> c.plusSource(new CurrentSource("stray-" + b.id(), earth, b.id(), amps))));
                }
                add(FaultKind.STRAY_FROM_BOARD, b.id(), variants);
                wrongBond(earth, b.id());
            }
        }
    }

    /** A wire from the earth to metal of its own, unless the two have a joint that must stay open: that has its own faults. */
    private void wrongBond(String earth, String body) {
        boolean isolated = boat.joints().stream()
                .map(BoatJoint::link)
                .anyMatch(l -> List.of(l.a(), l.b()).containsAll(List.of(earth, body)));
        if (!isolated) {
            add(
                    FaultKind.WRONG_BOND,
                    body,
                    one(c -> c.withLink(new Link.Resistor("wrong-bond-" + body, earth, body, 0.01))));
        }
    }

    private static Map<String, String> groups(Circuit circuit) {
        Map<String, String> group = new HashMap<>();
        circuit.bodies().forEach(b -> group.put(b.id(), b.id()));
        boolean changed = true;
        while (changed) {
            changed = false;
            for (Link l : circuit.links()) {
                String a = group.getOrDefault(l.a(), l.a());
                String b = group.getOrDefault(l.b(), l.b());
                if (l.conducts() && !a.equals(b)) {
                    group.replaceAll((k, v) -> v.equals(b) ? a : v);
                    changed = true;
                }
            }
        }
        return group;
    }

    private static List<Variant> one(UnaryOperator<Circuit> change) {
        return List.of(new Variant(1, change));
    }

    private static UnaryOperator<Circuit> open(Link l) {
        return c -> c.withLink(new Link.OpenJoint(l.id(), l.a(), l.b()));
    }

    private static List<Variant> ohms(Link l, double... ohms) {
        List<Variant> variants = new ArrayList<>();
        for (double ohm : ohms) {
            variants.add(new Variant(1.0 / ohms.length, c -> c.withLink(new Link.Resistor(l.id(), l.a(), l.b(), ohm))));
        }
        return variants;
    }

    private static List<Variant> evenly(List<Variant> variants) {
        return variants.stream()
                .map(v -> new Variant(1.0 / variants.size(), v.change()))
                .toList();
    }

    private void add(FaultKind kind, String where, List<Variant> variants) {
        String id = kind.name().toLowerCase(Locale.ROOT).replace('_', '-') + ":" + where;
        String words = kind.ofThePlace()
                ? kind.words() + ": " + boat.words(where).replaceFirst("^isolation ", "")
                : kind.words();
        double prior = boat.hotMarina() ? kind.usualInHotMarina() : kind.usual();
        faults.add(new Fault(id, kind, where, words, prior, variants));
    }
}

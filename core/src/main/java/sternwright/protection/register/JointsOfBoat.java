package sternwright.protection.register;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import sternwright.boat.Arrangement;
import sternwright.boat.Berth;
import sternwright.boat.Boat;
import sternwright.boat.Bond;
import sternwright.boat.Installation;
import sternwright.boat.Part;
import sternwright.boat.ShorePower;
import sternwright.finding.Source;
import sternwright.finding.Standing;
import sternwright.protection.circuit.Link;
import sternwright.protection.register.BoatJoint.Kind;

/**
 * Joins the bodies: first the bonds of the register, then what the arrangement has by nature and the register does not mention, then
 * the shore earth.
 */
final class JointsOfBoat {
    private static final Source BY_NATURE = new Source(
            "joint of a sound installation: anode bolts about 2, splines and straps about 10 milliohm",
            "",
            Standing.FROM_MEMORY);
    private static final Source BRUSH = new Source(
            "shaft-earthing supplier: 0.001 ohm with a water-lubricated bearing, 0.01 ohm with an oil bearing; 0.005 between",
            "",
            Standing.COMMON_PRACTICE);
    private static final Source GEARBOX =
            new Source("oil film of gearbox bearings: poor contact at rest, poorer turning", "", Standing.FROM_MEMORY);
    private static final Source SHORE = new Source(
            "earth conductor of a shore lead with its plugs; two silicon diodes in series each way conduct at about 1.2 V",
            "",
            Standing.COMMON_PRACTICE);

    private final AssumedFigures figures;
    private final Map<String, BoatBody> bodies = new HashMap<>();
    private final Set<Set<String>> known = new HashSet<>();
    private final boolean running;
    final List<BoatJoint> joints = new ArrayList<>();

    JointsOfBoat(AssumedFigures figures, List<BoatBody> bodies, boolean running) {
        this.figures = figures;
        this.running = running;
        bodies.forEach(b -> this.bodies.put(b.id(), b));
    }

    void addAll(Boat boat, Berth berth, boolean shoreLead) {
        boat.bonds().forEach(this::registered);
        for (Installation i : boat.installations()) {
            byNature(boat, i);
        }
        Hull.join(this, boat);
        batteryNegative(boat);
        if (bodies.containsKey(BodiesOfBoat.MARINA)) {
            shore(boat, berth.shorePower(), shoreLead);
        }
    }

    private void registered(Bond bond) {
        String a = bond.from().toString();
        String b = bond.to().toString();
        if (!bodies.containsKey(a) || !bodies.containsKey(b)) {
            return;
        }
        Double measured = bond.resistanceOhm();
        Kind kind = bond.never() ? Kind.ISOLATION : kind(a, b);
        if (bond.never() && measured == null) {
            add(new BoatJoint(new Link.OpenJoint(id(a, b), a, b), name(a, b, kind), kind, true));
            return;
        }
        double ohm = figures.value(
                id(a, b) + ".ohm", "resistance of the joint " + id(a, b), measured, usualOhm(kind), "ohm", BY_NATURE);
        add(new BoatJoint(new Link.Resistor(id(a, b), a, b, ohm), name(a, b, kind), kind, true));
    }

    private Kind kind(String a, String b) {
        if (body(a).anode() || body(b).anode()) {
            return Kind.ANODE_JOINT;
        }
        List<String> turning = List.of("propeller", "folding-propeller", "shaft", "jet-impeller");
        if (turning.contains(body(a).kind()) || turning.contains(body(b).kind())) {
            return Kind.SHAFT_LINE;
        }
        boolean engines = body(a).kind().equals("engine") && body(b).kind().equals("engine");
        return engines ? Kind.BATTERY_NEGATIVE : Kind.BONDING;
    }

    private static double usualOhm(Kind kind) {
        return kind == Kind.ANODE_JOINT ? 0.002 : 0.01;
    }

    private void byNature(Boat boat, Installation i) {
        switch (i.arrangement()) {
            case SAILDRIVE -> {
                join(i, "leg", "propeller", Kind.SHAFT_LINE, 0.01);
                isolate(i, "leg", "engine");
            }
            case STERNDRIVE -> {
                join(i, "leg", "propeller", Kind.SHAFT_LINE, 0.01);
                join(i, "transom-unit", "leg", Kind.BONDING, 0.01);
                join(i, "transom-unit", "rams", Kind.BONDING, 0.02);
                join(i, "transom-unit", "engine", Kind.BONDING, 0.01);
            }
            case POD -> {
                join(i, "pod-unit", "propeller", Kind.SHAFT_LINE, 0.01);
                join(i, "pod-unit", "engine", Kind.BONDING, 0.02);
            }
            case JET -> {
                join(i, "jet-unit", "jet-impeller", Kind.SHAFT_LINE, 0.05);
                join(i, "jet-unit", "wear-ring", Kind.BONDING, 0.01);
                join(i, "jet-unit", "bucket", Kind.BONDING, 0.05);
                join(i, "jet-unit", "intake-grate", Kind.BONDING, 0.01);
                join(i, "jet-unit", "engine", Kind.BONDING, 0.02);
            }
            case SHAFT -> shaftLine(i);
        }
        anodes(boat, i);
        bonded(boat, i);
    }

    private void shaftLine(Installation i) {
        join(i, "shaft", "propeller", Kind.SHAFT_LINE, 0.002);
        String shaft = find(i, "shaft");
        String engine = find(i, "engine");
        if (shaft == null || engine == null) {
            return;
        }
        boolean brush = i.parts().stream().anyMatch(p -> p.kind().equals("shaft-brush"));
        if (brush) {
            double ohm = figures.value(
                    i.id() + "/shaft-brush.ohm",
                    "resistance of the shaft brush of " + i.id(),
                    null,
                    0.005,
                    "ohm",
                    BRUSH);
            addLink(shaft, engine, Kind.SHAFT_BRUSH, ohm);
        } else {
            double ohm = figures.value(
                    i.id() + (running ? "/gearbox-turning.ohm" : "/gearbox-still.ohm"),
                    "shaft of " + i.id() + " to the engine through the gearbox",
                    null,
                    running ? 1 : 0.1,
                    "ohm",
                    GEARBOX);
            addLink(shaft, engine, Kind.SHAFT_LINE, ohm);
        }
    }

    /** Every anode sits on its parent, or on the part of its name. */
    private void anodes(Boat boat, Installation i) {
        for (Part p : i.parts()) {
            String id = i.id() + "/" + p.id();
            BoatBody anode = bodies.get(id);
            if (anode == null || !anode.anode()) {
                continue;
            }
            String carrier = carrier(boat, i, p);
            if (carrier != null) {
                addLink(carrier, id, Kind.ANODE_JOINT, jointOhm(carrier, id, Kind.ANODE_JOINT, 0.002));
            }
        }
    }

    private @Nullable String carrier(Boat boat, Installation i, Part anode) {
        String parent = anode.parentId();
        if (parent != null && bodies.containsKey(i.id() + "/" + parent)) {
            return i.id() + "/" + parent;
        }
        String stem = anode.kind().replace("-anode", "");
        for (String kind : List.of(stem, stem + "-unit", stem + "-unit-older", "folding-" + stem, "shaft", "leg")) {
            String found = find(i, kind);
            if (found != null && !stem.equals("hull")) {
                return found;
            }
        }
        String hull = hull(boat);
        return hull != null ? hull : find(i, "engine");
    }

    /** Where a hull anode or an earth plate shows that there is a bonding system, brackets, rudder and plate are on it. */
    private void bonded(Boat boat, Installation i) {
        boolean system = boat.installations().stream()
                .flatMap(x -> x.parts().stream())
                .anyMatch(p -> p.kind().equals("hull-anode") || p.kind().equals("earth-plate"));
        if (!system || i.arrangement() == Arrangement.SAILDRIVE) {
            join(i, "earth-plate", "engine", Kind.BONDING, 0.02);
            return;
        }
        String engine = find(i, "engine");
        if (engine == null) {
            return;
        }
        for (String kind : List.of("bracket", "rudder", "earth-plate", "keel-cooler")) {
            for (String part : all(i, kind)) {
                addLink(part, engine, Kind.BONDING, jointOhm(part, engine, Kind.BONDING, 0.02));
            }
        }
    }

    private void batteryNegative(Boat boat) {
        String first = null;
        for (Installation i : boat.installations()) {
            String engine = find(i, "engine");
            if (engine != null && first != null) {
                addLink(first, engine, Kind.BATTERY_NEGATIVE, jointOhm(first, engine, Kind.BATTERY_NEGATIVE, 0.005));
            }
            first = first == null ? engine : first;
        }
    }

    private void shore(Boat boat, ShorePower power, boolean plugged) {
        String earth = null;
        for (Installation i : boat.installations()) {
            earth = earth == null ? find(i, "engine") : earth;
        }
        if (earth == null) {
            return;
        }
        double lead = figures.value("shore-lead.ohm", "earth conductor of the shore lead", null, 0.35, "ohm", SHORE);
        String id = "shore-lead";
        Link link = !plugged || power == ShorePower.NONE || power == ShorePower.ISOLATION_TRANSFORMER
                ? new Link.OpenJoint(id, earth, BodiesOfBoat.MARINA)
                : power == ShorePower.EARTHED
                        ? new Link.Resistor(id, earth, BodiesOfBoat.MARINA, lead)
                        : new Link.Isolator(id, earth, BodiesOfBoat.MARINA, lead, 1e-9, 1.8, 2, 0.0256926);
        String words =
                power == ShorePower.GALVANIC_ISOLATOR ? "shore earth through the galvanic isolator" : "shore earth";
        add(new BoatJoint(link, words, Kind.SHORE_EARTH, true));
    }

    void join(Installation i, String kindA, String kindB, Kind kind, double ohm) {
        String a = find(i, kindA);
        String b = find(i, kindB);
        if (a != null && b != null) {
            addLink(a, b, kind, jointOhm(a, b, kind, ohm));
        }
    }

    private void isolate(Installation i, String kindA, String kindB) {
        String a = find(i, kindA);
        String b = find(i, kindB);
        if (a != null && b != null && !known.contains(Set.of(a, b))) {
            add(new BoatJoint(new Link.OpenJoint(id(a, b), a, b), name(a, b, Kind.ISOLATION), Kind.ISOLATION, false));
        }
    }

    double jointOhm(String a, String b, Kind kind, double usual) {
        if (known.contains(Set.of(a, b))) {
            return usual;
        }
        return figures.value(id(a, b) + ".ohm", name(a, b, kind), null, usual, "ohm", BY_NATURE);
    }

    void addLink(String a, String b, Kind kind, double ohm) {
        if (!a.equals(b) && !known.contains(Set.of(a, b))) {
            add(new BoatJoint(new Link.Resistor(id(a, b), a, b, ohm), name(a, b, kind), kind, false));
        }
    }

    private void add(BoatJoint joint) {
        if (known.add(Set.of(joint.link().a(), joint.link().b()))) {
            joints.add(joint);
        }
    }

    /** The metal hull: plating of the register, else the whole hull; null where the hull is no metal. */
    @Nullable
    String hull(Boat boat) {
        for (Installation i : boat.installations()) {
            String plating = find(i, "hull-plating");
            if (plating != null) {
                return plating;
            }
        }
        return bodies.containsKey(BodiesOfBoat.HULL) ? BodiesOfBoat.HULL : null;
    }

    private BoatBody body(String id) {
        BoatBody body = bodies.get(id);
        if (body == null) {
            throw new IllegalStateException("no body " + id);
        }
        return body;
    }

    /** Every body of a kind in an installation. */
    List<String> all(Installation i, String kind) {
        return i.parts().stream()
                .filter(p -> p.kind().equals(kind))
                .map(p -> i.id() + "/" + p.id())
                .filter(bodies::containsKey)
                .toList();
    }

    /** First body of a kind in an installation; folding propellers count as propellers, older pods as pods. */
    @Nullable
    String find(Installation i, String kind) {
        for (Part p : i.parts()) {
            boolean match = p.kind().equals(kind)
                    || p.kind().equals("folding-" + kind)
                    || p.kind().equals(kind + "-older");
            if (match && bodies.containsKey(i.id() + "/" + p.id())) {
                return i.id() + "/" + p.id();
            }
        }
        return null;
    }

    private static String id(String a, String b) {
        return a + "~" + b;
    }

    private String name(String a, String b, Kind kind) {
        String from = body(a).name();
        String to = body(b).name();
        return switch (kind) {
            case ANODE_JOINT -> body(b).anode() ? "joint of the " + to : "joint of the " + from;
            case SHAFT_LINE -> "shaft line between the " + from + " and the " + to;
            case SHAFT_BRUSH -> "brush between the " + from + " and the " + to;
            case BONDING -> "bond between the " + from + " and the " + to;
            case ISOLATION -> "isolation between the " + from + " and the " + to;
            case SHORE_EARTH -> "shore earth";
            case BATTERY_NEGATIVE -> "battery negative between the " + from + " and the " + to;
            case ONE_PIECE -> "the metal of the " + from;
        };
    }

    /** Inside and outside of a drive are one piece of metal. */
    void insideOfDrive(RawWaterPath path) {
        String inside = path.inside().id();
        if (bodies.containsKey(path.outside()) && bodies.containsKey(inside)) {
            Link link = new Link.Resistor(id(path.outside(), inside), path.outside(), inside, 0);
            add(new BoatJoint(link, name(path.outside(), inside, Kind.ONE_PIECE), Kind.ONE_PIECE, false));
        }
    }
}

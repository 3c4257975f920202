package sternwright.protection.register;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import sternwright.boat.Arrangement;
import sternwright.boat.Berth;
import sternwright.boat.Boat;
import sternwright.boat.Bond;
import sternwright.boat.Cooling;
import sternwright.boat.Hull;
import sternwright.boat.HullMaterial;
import sternwright.boat.Installation;
import sternwright.boat.Owner;
import sternwright.boat.Part;
import sternwright.boat.PartCatalogue;
import sternwright.boat.PartKind;
import sternwright.boat.ShorePower;
import sternwright.boat.Side;
import sternwright.boat.Water;
import sternwright.boat.Winter;

/** Invented boats for the tests of protection, one of each arrangement. */
public final class ProtectionBoats {
    private static final List<Double> TEMPERATE =
            List.of(7.0, 6.5, 7.0, 8.5, 11.0, 14.0, 16.5, 17.5, 16.5, 14.0, 11.0, 8.5);

    private ProtectionBoats() {}

    /** The kinds of part that matter to protection. */
    public static PartCatalogue kinds() {
        List<PartKind> kinds = new ArrayList<>();
        kinds.add(kind("engine", false, "cast-iron"));
        kinds.add(kind("shaft-brush", false, "copper"));
        for (String k : List.of("propeller", "folding-propeller", "bracket", "seacock", "earth-plate")) {
            kinds.add(kind(k, true, "bronze"));
        }
        for (String k : List.of("shaft", "rams", "rudder", "jet-impeller", "wear-ring", "intake-grate")) {
            kinds.add(kind(k, true, "stainless-passive"));
        }
        for (String k : List.of("leg", "transom-unit", "jet-unit", "bucket")) {
            kinds.add(kind(k, true, "aluminium-casting"));
        }
        kinds.add(kind("pod-unit", true, "nickel-aluminium-bronze"));
        for (String k : List.of("leg-anode", "transom-anode", "jet-anode")) {
            kinds.add(kind(k, true, "aluminium-anode"));
        }
        for (String k : List.of("shaft-anode", "propeller-anode", "pod-anode", "hull-anode")) {
            kinds.add(kind(k, true, "zinc-anode"));
        }
        kinds.add(kind("hull-plating", true, null));
        return new PartCatalogue(kinds);
    }

    private static PartKind kind(String id, boolean wet, @Nullable String metal) {
        return new PartKind(id, id.replace('-', ' '), "stern", wet, metal, null, Set.of());
    }

    /** A part of which the register knows nothing. */
    public static Part part(String id) {
        return Part.of(id, id);
    }

    /** A part with its metal, area and, for anodes, mass. */
    public static Part part(String id, String metal, double areaM2, @Nullable Double massKg) {
        return new Part(id, id, null, null, null, null, 1, metal, areaM2, massKg, null, Set.of(), Map.of());
    }

    /** A berth in the sea with a yearly course of temperature. */
    public static Berth sea(ShorePower shore) {
        return berth(new Water(33.0, null, TEMPERATE), shore);
    }

    /** A berth of any water. */
    public static Berth berth(Water water, ShorePower shore) {
        return new Berth("b1", "invented berth", 50, water, null, null, false, shore);
    }

    /** A boat of one or more installations. */
    public static Boat boat(HullMaterial hull, List<Bond> bonds, Installation... installations) {
        return new Boat(
                "test",
                "Invented",
                new Owner("nobody", null),
                "b1",
                "cruising",
                Winter.AFLOAT,
                new Hull(11, 3.6, 1.9, 8000, hull),
                Arrays.asList(installations),
                bonds,
                null,
                null);
    }

    /** An installation with parts named by their kinds. */
    public static Installation installation(String id, Arrangement arrangement, Cooling cooling, Part... parts) {
        Side side = id.equals("port") ? Side.PORT : id.equals("starboard") ? Side.STARBOARD : Side.CENTRELINE;
        return new Installation(id, side, arrangement, cooling, null, null, Arrays.asList(parts));
    }

    /** Saildrive with a zinc leg anode, raw-water cooled: the register knows areas. */
    public static Boat saildrive() {
        return boat(
                HullMaterial.GRP,
                List.of(),
                installation(
                        "main",
                        Arrangement.SAILDRIVE,
                        Cooling.RAW_WATER,
                        part("engine"),
                        part("leg", "aluminium-casting", 0.45, null),
                        part("propeller", "bronze", 0.12, null),
                        part("leg-anode", "zinc-anode", 0.03, 0.8)));
    }

    /** The same with a seacock that nothing is bonded to. */
    public static Boat withSeacock() {
        return boat(
                HullMaterial.GRP,
                List.of(),
                installation(
                        "main",
                        Arrangement.SAILDRIVE,
                        Cooling.RAW_WATER,
                        part("engine"),
                        part("leg"),
                        part("propeller"),
                        part("leg-anode"),
                        part("seacock")));
    }

    /** Twin sterndrives with everything assumed. */
    public static Boat twinSterndrive() {
        return boat(HullMaterial.GRP, List.of(), sterndrive("port"), sterndrive("starboard"));
    }

    private static Installation sterndrive(String id) {
        return installation(
                id,
                Arrangement.STERNDRIVE,
                Cooling.RAW_WATER,
                part("engine"),
                part("transom-unit"),
                part("leg"),
                part("rams"),
                part("propeller"),
                part("leg-anode"),
                part("transom-anode"));
    }

    /** Shaft with brush, bracket, hull anode. */
    public static Boat shaft(boolean brush) {
        List<Part> parts = new ArrayList<>(List.of(
                part("engine"),
                part("shaft"),
                part("propeller"),
                part("bracket"),
                part("hull-anode"),
                part("shaft-anode")));
        if (brush) {
            parts.add(part("shaft-brush"));
        }
        return boat(
                HullMaterial.GRP,
                List.of(),
                installation("main", Arrangement.SHAFT, Cooling.FRESH_WATER, parts.toArray(Part[]::new)));
    }

    /** Pod. */
    public static Boat pod() {
        return boat(
                HullMaterial.GRP,
                List.of(),
                installation(
                        "port",
                        Arrangement.POD,
                        Cooling.FRESH_WATER,
                        part("engine"),
                        part("pod-unit"),
                        part("propeller"),
                        part("pod-anode")));
    }

    /** Jet. */
    public static Boat jet() {
        return boat(
                HullMaterial.ALUMINIUM,
                List.of(),
                installation(
                        "main",
                        Arrangement.JET,
                        Cooling.FRESH_WATER,
                        part("engine"),
                        part("jet-unit"),
                        part("jet-impeller"),
                        part("bucket"),
                        part("intake-grate"),
                        part("jet-anode")));
    }

    /** Steel hull with a shaft and hull anodes. */
    public static Boat steel() {
        return boat(
                HullMaterial.STEEL,
                List.of(),
                installation(
                        "main",
                        Arrangement.SHAFT,
                        Cooling.KEEL,
                        part("engine"),
                        part("shaft"),
                        part("propeller"),
                        part("rudder"),
                        part("hull-anode", "zinc-anode", 0.3, 20.0)));
    }

    /** Builds a circuit with the standard metals. */
    public static BoatCircuit circuit(Boat boat, Berth berth, CircuitCondition condition) {
        return new CircuitFromRegister(kinds(), sternwright.protection.metal.MetalCatalogue.standard())
                .build(boat, berth, condition);
    }
}

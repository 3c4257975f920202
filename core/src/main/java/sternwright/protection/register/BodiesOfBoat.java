package sternwright.protection.register;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import sternwright.boat.Boat;
import sternwright.boat.Cooling;
import sternwright.boat.HullMaterial;
import sternwright.boat.Installation;
import sternwright.boat.Part;
import sternwright.boat.PartCatalogue;
import sternwright.boat.PartKind;
import sternwright.boat.PartRef;
import sternwright.finding.NearestName;
import sternwright.finding.Source;
import sternwright.finding.Standing;
import sternwright.protection.circuit.Body;
import sternwright.protection.metal.Metal;
import sternwright.protection.metal.MetalCatalogue;
import sternwright.protection.water.WaterResistance;

/** Turns wet parts, engines, a metal hull and the marina into bodies. */
final class BodiesOfBoat {
    static final String HULL = "hull";
    static final String MARINA = "marina";

    private static final Source USUAL_METAL =
            new Source("what this kind of part is usually made of", "", Standing.COMMON_PRACTICE);
    private static final Source COATING = new Source(
            "DNV-RP-B401 coating breakdown f = a + b t, paint category II (marine paint from 250 µm)",
            "0 to 30 m",
            Standing.PUBLISHED);
    private static final Source OXYGEN = new Source(
            "oxygen limit of a turning propeller about five times that of a still one; NRL corrosion models give 0.22 to 0.27 A/m2 still, hardly moved by temperature",
            "",
            Standing.FROM_MEMORY);
    private static final Source TO_THE_SEA =
            new Source("hose of 38 mm bore and 0.6 m between the engine's metal and the sea", "", Standing.FROM_MEMORY);
    private static final Source PILING = new Source(
            "steel piling and neighbours on the same earth: 150 m2 bare, 0.008 ohm in water of 0.2 ohm m",
            "",
            Standing.FROM_MEMORY);

    private final PartCatalogue kinds;
    private final MetalCatalogue metals;
    private final AssumedFigures figures;
    private final BerthWater water;
    private final CircuitCondition condition;
    private final double oxygen;
    private final double breakdown;
    final List<Body> bodies = new ArrayList<>();
    final List<BoatBody> meanings = new ArrayList<>();
    final List<RawWaterPath> rawWater = new ArrayList<>();
    private final PartNames names;

    BodiesOfBoat(
            PartCatalogue kinds,
            MetalCatalogue metals,
            AssumedFigures figures,
            BerthWater water,
            CircuitCondition condition,
            PartNames names) {
        this.names = names;
        this.kinds = kinds;
        this.metals = metals;
        this.figures = figures;
        this.water = water;
        this.condition = condition;
        double still =
                figures.value("oxygen.still", "oxygen supply at the berth over the curves' own", null, 1, "", OXYGEN);
        double moving =
                figures.value("oxygen.running", "oxygen supply under way over that of the curves", null, 5, "", OXYGEN);
        oxygen = condition.running() ? moving : still;
        double a = figures.value("coating.a", "share of new paint that is bare", null, 0.05, "", COATING);
        double b = figures.value("coating.b-per-year", "share of paint lost in a year", null, 0.025, "1/a", COATING);
        breakdown = Math.min(1, a + b * condition.coatingYears());
    }

    void addAll(Boat boat, boolean shoreEarth) {
        for (Installation i : boat.installations()) {
            for (Part p : i.parts()) {
                add(i, p);
            }
        }
        HullMaterial material = boat.hull().material();
        boolean plating = meanings.stream().anyMatch(m -> m.kind().equals("hull-plating"));
        if (isMetal(material) && !plating) {
            addHull(boat, material);
        }
        if (shoreEarth) {
            addMarina();
        }
    }

    private static boolean isMetal(HullMaterial material) {
        return material == HullMaterial.STEEL || material == HullMaterial.ALUMINIUM;
    }

    private String name(Installation i, Part p, PartKind kind) {
        return names.of(i, p, kind);
    }

    private void add(Installation i, Part p) {
        Optional<PartKind> kind = kinds.find(p.kind());
        if (kind.isEmpty()) {
            return;
        }
        if (p.kind().equals("engine")) {
            addEngine(i, p, kind.get());
        } else if (kind.get().wet()) {
            addWet(i, p, kind.get());
        }
    }

    private void addWet(Installation i, Part p, PartKind kind) {
        PartRef ref = new PartRef(i.id(), p.id());
        String id = ref.toString();
        @Nullable Metal metal = metal(id, p.metal(), kind.usualMetal());
        if (metal == null) {
            return;
        }
        PartDefaults usual = PartDefaults.of(kind.id());
        double area = area(id, p.wettedAreaM2(), usual.areaM2());
        boolean anode = metal.alloy() != null;
        double coated = anode
                ? 0
                : figures.value(
                        id + ".coated-share",
                        "share of " + id + " under paint",
                        p.coatedShare(),
                        usual.coatedShare(),
                        "",
                        PartDefaults.SIZE);
        @Nullable
        Double mass = !anode
                ? null
                : (Double) figures.value(
                        id + ".mass-kg",
                        "mass of " + id + " when new",
                        p.massKg(),
                        usual.massKg(),
                        "kg",
                        PartDefaults.SIZE);
        String painted = anode && p.conditions().contains("painted") ? "painted" : "";
        double bare = painted.isEmpty() ? 1 - coated + coated * breakdown : 0.05;
        add(
                new BoatBody(id, ref, name(i, p, kind), kind.id(), metal, area, mass, coated),
                bare,
                WaterResistance.compact(water.resistivityOhmM(), area));
    }

    private void addEngine(Installation i, Part p, PartKind kind) {
        PartRef ref = new PartRef(i.id(), p.id());
        String id = ref.toString();
        boolean direct = i.cooling() == Cooling.RAW_WATER;
        @Nullable Metal metal = metal(id, direct ? p.metal() : null, direct ? kind.usualMetal() : "bronze");
        if (metal == null || i.cooling() == Cooling.KEEL) {
            addDryEngine(id, ref, name(i, p, kind));
            return;
        }
        double area = area(id, direct ? p.wettedAreaM2() : null, direct ? 0.3 : 0.15);
        String name = name(i, p, kind);
        RawWaterPath path = RawWaterPath.of(i, id, names, kinds, metals, figures, water);
        double ohm = path != null
                ? path.hoseOhm() + path.passageOhm()
                : figures.value(
                        id + ".water-ohm",
                        "resistance of the raw-water passage from " + id + " to the sea",
                        null,
                        WaterResistance.column(water.resistivityOhmM(), 0.6, 0.038),
                        "ohm",
                        TO_THE_SEA);
        add(new BoatBody(id, ref, name, kind.id(), metal, area, null, 0), 1, ohm);
        if (path != null) {
            add(path.inside(), 1, path.passageOhm());
            rawWater.add(path);
        }
    }

    private void addDryEngine(String id, PartRef ref, String name) {
        Metal iron = metals.metal("cast-iron");
        add(new BoatBody(id, ref, name + " (no raw water in it)", "engine", iron, 0, null, 0), 1, 0);
    }

    private void addHull(Boat boat, HullMaterial material) {
        Metal metal = metals.metal(material == HullMaterial.STEEL ? "mild-steel" : "aluminium-hull");
        double usual = 0.85
                * boat.hull().lengthM()
                * (boat.hull().beamM() + boat.hull().draughtM());
        double area = area(HULL, null, usual);
        double coated =
                figures.value(HULL + ".coated-share", "share of the hull under paint", null, 1, "", PartDefaults.SIZE);
        add(
                new BoatBody(
                        HULL,
                        null,
                        (material == HullMaterial.STEEL ? "steel" : "aluminium") + " hull",
                        HULL,
                        metal,
                        area,
                        null,
                        coated),
                1 - coated + coated * breakdown,
                WaterResistance.compact(water.resistivityOhmM(), area));
    }

    private void addMarina() {
        Metal steel = metals.metal("mild-steel");
        double bare = figures.value(
                "marina.bare-area-m2", "bare steel of the marina on the shore earth", null, 150, "m2", PILING);
        double ohm = figures.value(
                "marina.water-ohm",
                "resistance of the marina's metal to remote water",
                null,
                0.008 * water.resistivityOhmM() / 0.2,
                "ohm",
                PILING);
        add(new BoatBody(MARINA, null, "marina earth, piling and neighbours", MARINA, steel, bare, null, 0), 1, ohm);
    }

    private double area(String id, @Nullable Double known, double usual) {
        return figures.value(id + ".area-m2", "wetted area of " + id, known, usual, "m2", PartDefaults.SIZE);
    }

    private @Nullable Metal metal(String id, @Nullable String given, @Nullable String usual) {
        if (given != null) {
            return known(id, given);
        }
        if (usual == null) {
            return null;
        }
        Metal metal = metals.metal(usual);
        figures.value(
                id + ".metal",
                "metal of " + id + " taken as " + metal.name(),
                null,
                metal.freePotentialV(),
                "V",
                USUAL_METAL);
        return metal;
    }

    private @Nullable Metal known(String id, String metal) {
        if (metals.knows(metal)) {
            return metals.metal(metal);
        }
        List<String> all = metals.metals().stream().map(Metal::id).toList();
        figures.refuse(new RegisterProblem(
                RegisterProblem.About.BOAT,
                id,
                "no metal or alloy \"" + metal + "\" in the catalogue",
                "one of " + String.join(", ", all),
                NearestName.of(metal, all)
                        .map(n -> "Did you mean \"" + n + "\"?")
                        .orElse("")));
        return null;
    }

    private void add(BoatBody meaning, double bare, double waterOhm) {
        double r = meaning.kind().equals(MARINA)
                        || meaning.kind().equals("engine")
                        || meaning.kind().equals(RawWaterPath.INSIDE)
                ? waterOhm
                : figures.value(
                        meaning.id() + ".water-ohm",
                        "resistance of " + meaning.id() + " to remote water",
                        waterOhm,
                        waterOhm,
                        "ohm",
                        WaterResistance.DESIGN_RULE);
        bodies.add(new Body(
                meaning.id(),
                meaning.metal().id(),
                meaning.areaM2(),
                bare,
                r,
                meaning.metal().curve(water.fresh(), oxygen)));
        meanings.add(meaning);
    }

    boolean running() {
        return condition.running();
    }
}

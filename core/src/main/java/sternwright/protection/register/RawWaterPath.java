package sternwright.protection.register;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import sternwright.boat.Arrangement;
import sternwright.boat.Installation;
import sternwright.boat.Part;
import sternwright.boat.PartCatalogue;
import sternwright.boat.PartKind;
import sternwright.finding.Source;
import sternwright.finding.Standing;
import sternwright.protection.circuit.Body;
import sternwright.protection.circuit.MutualResistance;
import sternwright.protection.metal.Metal;
import sternwright.protection.metal.MetalCatalogue;
import sternwright.protection.water.WaterResistance;

/**
 * The raw water that a drive draws in through itself: from the engine's wetted metal along the hose to the bare metal inside the drive,
 * and from there out through the intake to the sea.
 *
 * <p>Seen from remote water the two ends are a tree: the engine lies behind hose and passage, the inside of the drive behind the passage
 * alone, and the passage is what they share. So the engine's resistance is the sum, the inside's the passage, their mutual one the
 * passage (Kirchhoff).
 *
 * @param engine body of the engine
 * @param outside body of the drive seen from the sea
 * @param inside body of the drive's inside
 * @param hoseOhm from the engine's metal to the inside of the drive
 * @param passageOhm from there to the sea
 */
record RawWaterPath(String engine, String outside, BoatBody inside, double hoseOhm, double passageOhm) {
    /** Kind of a body that is the inside of a drive. */
    static final String INSIDE = "raw-water-inside";

    private static final Map<Arrangement, String> DRIVE = Map.of(
            Arrangement.SAILDRIVE, "leg",
            Arrangement.STERNDRIVE, "leg",
            Arrangement.POD, "pod-unit",
            Arrangement.JET, "jet-unit");

    private static final Source HOSE = new Source(
            "hose of 38 mm bore and 0.6 m full of still water between the engine's metal and the inside of the drive",
            "",
            Standing.FROM_MEMORY);
    private static final Source PASSAGE =
            new Source("channel of 38 mm bore and 0.25 m from the hose tail to the intake", "", Standing.FROM_MEMORY);
    private static final Source INSIDE_AREA = new Source(
            "channel of 38 mm bore and 0.25 m, painted but for a fifth; the water in it is still at the berth",
            "",
            Standing.FROM_MEMORY);

    /** The path of an installation; null where the engine does not draw its water through the drive. */
    static @Nullable RawWaterPath of(
            Installation i,
            String engine,
            PartNames names,
            PartCatalogue kinds,
            MetalCatalogue metals,
            AssumedFigures figures,
            BerthWater water) {
        String kind = DRIVE.get(i.arrangement());
        for (Part p : i.parts()) {
            if (kind == null || !p.kind().equals(kind) && !p.kind().equals(kind + "-older")) {
                continue;
            }
            String outside = i.id() + "/" + p.id();
            PartKind drive = kinds.find(p.kind()).orElse(null);
            String metal = p.metal() != null ? p.metal() : drive == null ? null : drive.usualMetal();
            if (drive == null || metal == null || !metals.knows(metal)) {
                return null;
            }
            return between(engine, outside, names.of(i, p, drive), metals.metal(metal), figures, water);
        }
        return null;
    }

    private static RawWaterPath between(
            String engine, String outside, String name, Metal metal, AssumedFigures figures, BerthWater water) {
        double area = figures.value(
                outside + ".inside-area-m2",
                "bare metal of the raw-water passage inside " + outside,
                null,
                0.006,
                "m2",
                INSIDE_AREA);
        double hose = figures.value(
                engine + ".raw-water-ohm",
                "resistance of the raw water in the hose from " + engine + " to the inside of " + outside,
                null,
                WaterResistance.column(water.resistivityOhmM(), 0.6, 0.038),
                "ohm",
                HOSE);
        double passage = figures.value(
                outside + ".passage-ohm",
                "resistance of the raw water from the inside of " + outside + " to the sea",
                null,
                WaterResistance.column(water.resistivityOhmM(), 0.25, 0.038),
                "ohm",
                PASSAGE);
        BoatBody inside =
                new BoatBody(outside + ".inside", null, "inside of the " + name, INSIDE, metal, area, null, 0);
        return new RawWaterPath(engine, outside, inside, hose, passage);
    }

    /** What the two ends of each path share, where both are in the circuit. */
    static List<MutualResistance> shared(List<RawWaterPath> paths, List<Body> bodies) {
        List<MutualResistance> list = new ArrayList<>();
        List<String> there = bodies.stream().map(Body::id).toList();
        for (RawWaterPath p : paths) {
            if (p.passageOhm > 0 && there.contains(p.engine) && there.contains(p.inside.id())) {
                list.add(new MutualResistance(p.engine, p.inside.id(), p.passageOhm));
            }
        }
        return list;
    }
}

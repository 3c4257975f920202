package sternwright.protection.metal;

import java.util.List;
import sternwright.finding.Source;
import sternwright.finding.Standing;
import sternwright.protection.circuit.Reaction;
import sternwright.protection.metal.Metal.Family;

/** The sacrificial alloys. */
final class AnodeAlloys {
    private static final Source CURVE = new Source(
            "Tafel lines chosen to land on the alloys' published open- and closed-circuit potentials",
            "zinc and aluminium film over in fresh water",
            Standing.FROM_MEMORY);

    private AnodeAlloys() {}

    static List<Metal> all() {
        return List.of(magnesium(), aluminium(), zinc());
    }

    private static Metal magnesium() {
        List<Reaction> sea =
                List.of(Reaction.anodic(-1.55, 1.0, 0.12), Reaction.cathodic(-1.55, 1.0, 0.15, Reaction.NO_LIMIT));
        List<Reaction> fresh =
                List.of(Reaction.anodic(-1.55, 0.3, 0.12), Reaction.cathodic(-1.55, 0.3, 0.15, Reaction.NO_LIMIT));
        Source source = new Source(
                "MIL-HDBK-1004/10: 8.8 lb per ampere-year at efficiency 0.50; suppliers 1100 to 1230 Ah/kg",
                "alloy AZ63, MIL-A-21412",
                Standing.PUBLISHED);
        return anode(
                "magnesium-anode",
                "magnesium anode",
                -1.55,
                source,
                sea,
                fresh,
                new AnodeAlloy(1100, 0, 2205, -1.45, 1800, source));
    }

    private static Metal aluminium() {
        List<Reaction> sea = List.of(
                Reaction.anodic(-1.1, 0.03, 0.035),
                Reaction.cathodic(-1.1, 0.06, 0.12, 0.06),
                Reaction.cathodic(-1.3, 0.01, 0.12, Reaction.NO_LIMIT));
        List<Reaction> fresh = List.of(
                new Reaction(Reaction.Kind.ANODIC, -0.95, 0.008, 0.08, 0.12),
                Reaction.cathodic(-0.95, 0.05, 0.12, 0.05),
                Reaction.cathodic(-1.3, 0.003, 0.12, Reaction.NO_LIMIT));
        Source source = new Source(
                "DNV-RP-B401 (2005 to 2021), ABS 2017: 2000 Ah/kg, -1.05 V closed circuit, Q = 2000 - 27 (T - 20) when warm",
                "Al-Zn-In, MIL-DTL-24779D",
                Standing.PUBLISHED);
        return anode(
                "aluminium-anode",
                "aluminium anode",
                -1.10,
                source,
                sea,
                fresh,
                new AnodeAlloy(2000, 27, 2980, -1.05, 2750, source));
    }

    private static Metal zinc() {
        List<Reaction> sea = List.of(
                Reaction.anodic(-1.05, 0.05, 0.04),
                Reaction.cathodic(-1.05, 0.1, 0.12, 0.1),
                Reaction.cathodic(-1.3, 0.01, 0.12, Reaction.NO_LIMIT));
        List<Reaction> fresh = List.of(
                new Reaction(Reaction.Kind.ANODIC, -0.95, 0.01, 0.08, 0.2),
                Reaction.cathodic(-0.95, 0.05, 0.12, 0.05),
                Reaction.cathodic(-1.3, 0.003, 0.12, Reaction.NO_LIMIT));
        Source source = new Source(
                "DNV-RP-B401, ABS 2017, MIL-A-18001: 780 Ah/kg, -1.05 V free, -1.03 V closed circuit",
                "zinc to MIL-A-18001",
                Standing.PUBLISHED);
        return anode(
                "zinc-anode",
                "zinc anode",
                -1.05,
                source,
                sea,
                fresh,
                new AnodeAlloy(780, 0, 820, -1.03, 7130, source));
    }

    private static Metal anode(
            String id,
            String name,
            double freeV,
            Source source,
            List<Reaction> sea,
            List<Reaction> fresh,
            AnodeAlloy alloy) {
        return new Metal(id, name, Family.ANODE, freeV, source, sea, fresh, CURVE, null, alloy);
    }
}

package sternwright.app.demo;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import sternwright.boat.Arrangement;
import sternwright.boat.Cooling;
import sternwright.boat.Installation;
import sternwright.boat.Part;

/** Makes the usual parts of an arrangement into those of one invented engine: sizes, ages, access, what else is fitted. */
final class InventedOutfit {
    /** Lives by which an invented part was renewed before the past begins, months, as in the generic programme. */
    private static final Map<String, Integer> LIVES = Map.of("diaphragm-seal", 84, "bellows", 36, "pod-seals", 120);

    private static final Set<String> CRAMPED = Set.of(
            "primary-fuel-filter",
            "injectors",
            "belts",
            "hoses",
            "mounts",
            "raw-water-pump",
            "siphon-break",
            "heat-exchanger",
            "mixing-elbow",
            "coupling",
            "gland",
            "diaphragm-seal");
    private static final int PAST_YEARS = 9;

    private final LocalDate built;
    private final LocalDate today;
    private final double powerKw;
    private final double known;
    private final SplittableRandom random;

    /** {@code known} is the share of dates and capacities the register knows. */
    InventedOutfit(LocalDate built, LocalDate today, double powerKw, double known, SplittableRandom random) {
        this.built = built;
        this.today = today;
        this.powerKw = powerKw;
        this.known = known;
        this.random = random;
    }

    List<Part> of(Installation usual) {
        List<Part> parts = new ArrayList<>(usual.parts());
        double seal = random.nextDouble();
        kind(parts, "gland", seal < 0.4 ? "packed-gland" : seal < 0.75 ? "lip-seal" : "face-seal");
        if (built.isBefore(today.minusYears(11))) {
            kind(parts, "pod-unit", "pod-unit-older");
        }
        if (random.nextDouble() < 0.5) {
            parts.removeIf(p -> p.id().equals("siphon-break"));
        }
        propeller(usual.arrangement(), parts);
        if (usual.cooling() == Cooling.FRESH_WATER) {
            coolers(parts);
        }
        if (usual.arrangement() == Arrangement.SHAFT && random.nextDouble() < 0.5) {
            parts.add(Part.of("shaft-brush", "shaft-brush"));
            parts.add(anode("hull-anode", "engine", 2.6, 0.03));
        }
        if (usual.arrangement() == Arrangement.POD || usual.arrangement() == Arrangement.JET) {
            parts.add(Part.of("bonding-wires", "bonding-wires"));
        }
        return parts.stream().map(this::dressed).toList();
    }

    private void propeller(Arrangement arrangement, List<Part> parts) {
        double u = random.nextDouble();
        boolean folding = arrangement == Arrangement.SAILDRIVE ? u < 0.6 : arrangement == Arrangement.SHAFT && u < 0.15;
        kind(parts, "propeller", folding ? "folding-propeller" : "propeller");
        if (folding) {
            parts.add(anode("propeller-anode", "propeller", 0.35, 0.008));
        }
    }

    private void coolers(List<Part> parts) {
        if (powerKw > 60) {
            parts.add(Part.of("charge-air-cooler", "charge-air-cooler"));
            parts.add(new Part(
                    "cooler-anode",
                    "cooler-anode",
                    "heat-exchanger",
                    null,
                    null,
                    null,
                    1,
                    "zinc-anode",
                    null,
                    0.15,
                    null,
                    Set.of(),
                    Map.of()));
        }
        if (random.nextDouble() < 0.4) {
            parts.add(Part.of("calorifier", "calorifier"));
        }
    }

    private static Part anode(String kind, String parent, double massKg, double areaM2) {
        return new Part(kind, kind, parent, null, null, null, 1, "zinc-anode", areaM2, massKg, 0.0, Set.of(), Map.of());
    }

    private static void kind(List<Part> parts, String id, String kind) {
        Predicate<Part> asked = p -> p.id().equals(id);
        parts.replaceAll(p -> asked.test(p)
                ? new Part(
                        p.id(),
                        kind,
                        p.parentId(),
                        p.fittedOn(),
                        p.hoursAtFitting(),
                        p.capacityL(),
                        p.access(),
                        p.metal(),
                        p.wettedAreaM2(),
                        p.massKg(),
                        p.coatedShare(),
                        p.conditions(),
                        p.makerFigures())
                : p);
    }

    private Part dressed(Part p) {
        boolean engine = p.id().equals("engine");
        LocalDate fitted = fitted(p.kind());
        return new Part(
                p.id(),
                p.kind(),
                p.parentId(),
                engine || random.nextDouble() < known ? fitted : null,
                engine ? (Double) 0.0 : null,
                capacity(p.kind()),
                access(p.id()),
                p.metal(),
                p.wettedAreaM2(),
                p.massKg(),
                p.coatedShare(),
                p.conditions(),
                p.makerFigures());
    }

    private LocalDate fitted(String kind) {
        Integer life = LIVES.get(kind);
        LocalDate fitted = built;
        while (life != null && fitted.plusMonths(life).isBefore(today.minusYears(PAST_YEARS))) {
            fitted = fitted.plusMonths(life);
        }
        return fitted;
    }

    private double access(String id) {
        if (!CRAMPED.contains(id)) {
            return 1;
        }
        return random.nextDouble() < 0.2 ? 2.5 : 1.5;
    }

    /** Litres by power; invented. */
    private @Nullable Double capacity(String kind) {
        double litres = switch (kind) {
            case "engine" -> 2 + 0.11 * powerKw;
            case "fuel-tank" -> 40 + 3 * powerKw;
            case "raw-water-circuit" -> 3 + 0.05 * powerKw;
            case "coolant-circuit" -> 4 + 0.12 * powerKw;
            case "gearbox" -> 0.6 + 0.012 * powerKw;
            case "leg" -> 2.2 + 0.004 * powerKw;
            case "pod-unit", "pod-unit-older" -> 10 + 0.02 * powerKw;
            case "jet-unit" -> 0.9;
            default -> 0;
        };
        return litres > 0 && random.nextDouble() < known ? (Double) (Math.rint(litres * 10) / 10) : null;
    }
}

package sternwright.app.demo;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import sternwright.boat.Arrangement;
import sternwright.boat.Cooling;
import sternwright.boat.Part;

/** The parts of one invented installation, sized by its engine's power. */
final class InventedParts {
    private final double powerKw;
    private final Cooling cooling;
    private final SplittableRandom random;
    private final LocalDate built;
    private final LocalDate today;
    private final double known;
    private final List<Part> parts = new ArrayList<>();

    /** {@code known} is the share of dates the register knows. */
    InventedParts(
            double powerKw, Cooling cooling, LocalDate built, LocalDate today, double known, SplittableRandom random) {
        this.powerKw = powerKw;
        this.cooling = cooling;
        this.built = built;
        this.today = today;
        this.known = known;
        this.random = random;
    }

    List<Part> of(Arrangement arrangement, boolean folding) {
        engine(arrangement);
        if (cooling != Cooling.KEEL) {
            rawWater(arrangement);
        }
        if (cooling != Cooling.RAW_WATER) {
            coolant();
        }
        switch (arrangement) {
            case SHAFT -> shaft(folding);
            case SAILDRIVE -> saildrive(folding);
            case STERNDRIVE -> sterndrive();
            case POD -> pod();
            case JET -> jet();
        }
        return List.copyOf(parts);
    }

    private void engine(Arrangement arrangement) {
        parts.add(new Part(
                "engine",
                "engine",
                null,
                built,
                0.0,
                litres(2 + 0.11 * powerKw),
                1,
                "cast-iron",
                null,
                null,
                null,
                Set.of(),
                Map.of()));
        inside("primary-fuel-filter", 1.5);
        inside("fine-fuel-filter", 1);
        held("fuel-tank", 40 + 3 * powerKw, 1);
        inside("air-filter", 1);
        inside("injectors", 1.5);
        inside("belts", 1.5);
        inside("hoses", 1.5);
        inside(
                "mounts",
                arrangement == Arrangement.SAILDRIVE ? "mounts-saildrive" : "mounts-four",
                random.nextDouble() < 0.2 ? 2.5 : 1.5);
        inside("battery-bank", 1);
    }

    private void rawWater(Arrangement arrangement) {
        held("raw-water-circuit", 3 + 0.05 * powerKw, 1);
        inside("raw-water-pump", random.nextDouble() < 0.3 ? 2.5 : 1.5);
        if (arrangement != Arrangement.STERNDRIVE) {
            inside("strainer", 1);
            wet("seacock", "engine", "bronze", 0.006, 0);
        }
        if (random.nextDouble() < 0.5) {
            inside("siphon-break", 1.5);
        }
        inside("mixing-elbow", 1.5);
        if (cooling == Cooling.RAW_WATER) {
            anodeInside("engine-anode", 0.12);
        }
    }

    private void coolant() {
        held("coolant-circuit", 4 + 0.12 * powerKw, 1);
        inside("thermostat", 1);
        if (cooling == Cooling.KEEL) {
            wet("keel-cooler", "engine", "copper-nickel", 0.4 + 0.004 * powerKw, 0);
            return;
        }
        inside("heat-exchanger", 1.5);
        if (powerKw > 60) {
            inside("charge-air-cooler", 1.5);
            anodeInside("cooler-anode", 0.15);
        }
        if (random.nextDouble() < 0.4) {
            inside("calorifier", 1);
        }
    }

    private void shaft(boolean folding) {
        held("gearbox", 0.6 + 0.012 * powerKw, 1);
        inside("coupling", 1.5);
        double seal = random.nextDouble();
        inside(seal < 0.4 ? "packed-gland" : seal < 0.75 ? "lip-seal" : "face-seal", 1.5);
        wet("shaft", "engine", "stainless-passive", 0.12 + 0.001 * powerKw, 0);
        inside("water-lubricated-bearing", 1);
        String propeller = folding ? "folding-propeller" : "propeller";
        wet(propeller, "shaft", "bronze", 0.15 + 0.0015 * powerKw, 0);
        anode("shaft-anode", "shaft", "zinc-anode", 0.8, 0.012);
        if (folding) {
            anode("propeller-anode", "folding-propeller", "zinc-anode", 0.35, 0.008);
        }
        if (random.nextDouble() < 0.5) {
            inside("shaft-brush", 1);
            anode("hull-anode", "engine", "zinc-anode", 2.6, 0.03);
        }
    }

    private void saildrive(boolean folding) {
        parts.add(new Part(
                "leg",
                "leg",
                "engine",
                built,
                0.0,
                litres(2.2 + 0.01 * powerKw),
                1,
                "aluminium-casting",
                0.42,
                null,
                0.97,
                Set.of(),
                Map.of()));
        anode("leg-anode", "leg", anodeMetal(), 0.55, 0.012);
        String propeller = folding ? "folding-propeller" : "propeller";
        wet(propeller, "leg", "bronze", 0.14, 0);
        if (folding) {
            anode("propeller-anode", "folding-propeller", anodeMetal(), 0.3, 0.007);
        }
        aged("diaphragm-seal", 84, 1.5);
        inside("leak-sensor", 1);
    }

    private void sterndrive() {
        wet("transom-unit", "engine", "aluminium-casting", 0.25, 0.95);
        parts.add(new Part(
                "leg",
                "leg",
                "transom-unit",
                built,
                0.0,
                litres(2.3 + 0.002 * powerKw),
                1,
                "aluminium-casting",
                0.6,
                null,
                0.95,
                Set.of(),
                Map.of()));
        wet("propeller", "leg", "stainless-passive", 0.2, 0);
        anode("leg-anode", "leg", anodeMetal(), 0.45, 0.01);
        anode("transom-anode", "transom-unit", anodeMetal(), 0.9, 0.02);
        aged("bellows", 36, 1);
        inside("gimbal-bearing", 1);
        wet("rams", "transom-unit", "stainless-passive", 0.08, 0);
        inside("bonding-wires", 1.5);
    }

    private void pod() {
        boolean older = built.isBefore(today.minusYears(11));
        parts.add(new Part(
                "pod",
                older ? "pod-unit-older" : "pod-unit",
                "engine",
                built,
                0.0,
                litres(10 + 0.02 * powerKw),
                1,
                "nickel-aluminium-bronze",
                1.1,
                null,
                0.9,
                Set.of(),
                Map.of()));
        wet("propeller", "pod", "nickel-aluminium-bronze", 0.5, 0);
        aged("pod-seals", 120, 1.5);
        inside("leak-sensor", 1);
        anode("pod-anode", "pod", "zinc-anode", 1.8, 0.03);
        inside("bonding-wires", 1);
    }

    private void jet() {
        held("gearbox", 1.2 + 0.01 * powerKw, 1);
        parts.add(new Part(
                "jet",
                "jet-unit",
                "engine",
                built,
                0.0,
                litres(0.9),
                1,
                "aluminium-casting",
                0.8,
                null,
                0.9,
                Set.of(),
                Map.of()));
        wet("jet-impeller", "jet", "stainless-passive", 0.22, 0);
        wet("wear-ring", "jet", "stainless-passive", 0.08, 0);
        wet("bucket", "jet", "aluminium-casting", 0.3, 0.9);
        anode("jet-anode", "jet", anodeMetal(), 1.2, 0.02);
        inside("bonding-wires", 1);
    }

    private String anodeMetal() {
        return random.nextDouble() < 0.7 ? "aluminium-anode" : "zinc-anode";
    }

    private void inside(String kind, double access) {
        inside(kind, kind, access);
    }

    private void inside(String id, String kind, double access) {
        parts.add(
                new Part(id, kind, null, date(built), null, null, access, null, null, null, null, Set.of(), Map.of()));
    }

    private void held(String kind, double litres, double access) {
        @Nullable Double capacity = random.nextDouble() < 0.85 ? litres(litres) : null;
        parts.add(new Part(
                kind, kind, null, date(built), null, capacity, access, null, null, null, null, Set.of(), Map.of()));
    }

    /** A part with a life, renewed at some time before the past begins, or not known. */
    private void aged(String kind, int lifeMonths, double access) {
        LocalDate fitted = built;
        LocalDate begin = today.minusYears(9);
        while (fitted.plusMonths(lifeMonths).isBefore(begin)) {
            fitted = fitted.plusMonths(lifeMonths);
        }
        parts.add(new Part(
                kind, kind, null, date(fitted), null, null, access, null, null, null, null, Set.of(), Map.of()));
    }

    private void wet(String kind, String parent, String metal, double areaM2, double coated) {
        parts.add(new Part(
                kind,
                kind,
                parent,
                date(built),
                null,
                null,
                1,
                metal,
                Math.rint(areaM2 * 1000) / 1000,
                null,
                coated,
                Set.of(),
                Map.of()));
    }

    private void anode(String kind, String parent, String metal, double massKg, double areaM2) {
        parts.add(new Part(
                kind, kind, parent, date(built), null, null, 1, metal, areaM2, massKg, 0.0, Set.of(), Map.of()));
    }

    private void anodeInside(String kind, double massKg) {
        parts.add(new Part(
                kind,
                kind,
                "engine",
                date(built),
                null,
                null,
                1.5,
                "zinc-anode",
                null,
                massKg,
                null,
                Set.of(),
                Map.of()));
    }

    private @Nullable LocalDate date(LocalDate fitted) {
        return random.nextDouble() < known ? fitted : null;
    }

    private static double litres(double value) {
        return Math.rint(value * 10) / 10;
    }
}

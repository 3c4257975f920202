package sternwright.app.demo;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import sternwright.app.files.Shipped;
import sternwright.app.files.template.BoatTemplate;
import sternwright.boat.Arrangement;
import sternwright.boat.Berth;
import sternwright.boat.Boat;
import sternwright.boat.Bond;
import sternwright.boat.Cooling;
import sternwright.boat.HullMaterial;
import sternwright.boat.Installation;
import sternwright.boat.Owner;
import sternwright.boat.Part;
import sternwright.boat.PartRef;
import sternwright.boat.Winter;

/** Boats made up from a seed: every arrangement, single and twin, every cooling, every berth. */
final class InventedFleet {
    /** One line of the mix: how many of twenty boats, on which engine, used how. */
    private record Type(
            int ofTwenty,
            Arrangement arrangement,
            double twinShare,
            List<String> uses,
            List<String> models,
            List<Double> powersKw,
            double shortestM,
            double longestM) {}

    private static final List<Type> MIX = List.of(
            new Type(
                    7,
                    Arrangement.SHAFT,
                    0.25,
                    List.of("cruising", "liveaboard", "work", "motor"),
                    List.of("K-40", "K-75", "K-110"),
                    List.of(29.0, 55.0, 81.0),
                    8.5,
                    15),
            new Type(
                    6,
                    Arrangement.SAILDRIVE,
                    0.15,
                    List.of("weekend", "cruising", "charter", "cruising"),
                    List.of("M-20", "M-30", "M-40"),
                    List.of(14.0, 21.0, 29.0),
                    8,
                    14),
            new Type(
                    3,
                    Arrangement.STERNDRIVE,
                    0.35,
                    List.of("motor", "charter", "motor"),
                    List.of("S-150", "S-220"),
                    List.of(110.0, 162.0),
                    6.5,
                    10),
            new Type(2, Arrangement.POD, 0.8, List.of("motor", "charter"), List.of("P-300"), List.of(221.0), 10, 15),
            new Type(2, Arrangement.JET, 0.4, List.of("work", "motor"), List.of("J-250"), List.of(184.0), 7, 12));

    private static final double FASTENED_OHM = 0.002;
    private static final double WIRED_OHM = 0.01;
    private static final double BRUSHED_OHM = 0.05;

    private final LocalDate today;
    private final List<Berth> berths;
    private final BoatTemplate template = new BoatTemplate(Shipped.arrangements(), Shipped.catalogue());

    InventedFleet(LocalDate today, List<Berth> berths) {
        this.today = today;
        this.berths = berths;
    }

    /** The boat of a place in the list; {@code known} is the share of dates its register knows. */
    Boat boat(int index, double known, SplittableRandom random) {
        Type type = type(index);
        int size = random.nextInt(type.models.size());
        Boat usual = template.boat(known(index, type, size, random));
        LocalDate built = today.minusYears(9 + random.nextInt(14)).withDayOfYear(1 + random.nextInt(150));
        // Twins are fitted alike.
        List<Part> parts = new InventedOutfit(built, today, type.powersKw.get(size), known, random)
                .of(usual.installations().get(0));
        List<Installation> installations = usual.installations().stream()
                .map(i -> new Installation(
                        i.id(), i.side(), i.arrangement(), i.cooling(), i.engineModel(), i.powerKw(), parts))
                .toList();
        return new Boat(
                usual.id(),
                usual.name(),
                usual.owner(),
                usual.berthId(),
                usual.use(),
                usual.winter(),
                usual.hull(),
                installations,
                bonds(usual, installations),
                null,
                null);
    }

    private BoatTemplate.Known known(int index, Type type, int size, SplittableRandom random) {
        String name = InventedNames.boat(index);
        double lengthM = tenths(type.shortestM + (type.longestM - type.shortestM) * random.nextDouble());
        boolean sailing = type.arrangement == Arrangement.SAILDRIVE;
        String use = type.uses.get(random.nextInt(type.uses.size()));
        return new BoatTemplate.Known(
                InventedNames.id(name),
                name,
                new Owner(InventedNames.owner(index), "owner-" + (index + 1) + "@example.invalid"),
                berths.get(index % berths.size()).id(),
                use,
                winter(use, random),
                lengthM,
                null,
                sailing ? null : (Double) tenths(0.09 * lengthM),
                null,
                material(type, random),
                type.arrangement,
                cooling(type, random),
                // Multiples of the golden ratio spread evenly, so that every type has both single and twin boats.
                (index * 0.6180339887) % 1 < type.twinShare,
                type.models.get(size),
                type.powersKw.get(size));
    }

    private static Type type(int index) {
        // Spread evenly: seven steps on in a row of twenty reach every place once.
        int place = (index * 7) % 20;
        for (Type type : MIX) {
            place -= type.ofTwenty;
            if (place < 0) {
                return type;
            }
        }
        throw new IllegalStateException("the mix adds up to twenty");
    }

    private static List<Bond> bonds(Boat usual, List<Installation> installations) {
        List<Bond> bonds = new ArrayList<>();
        usual.bonds()
                .forEach(b ->
                        bonds.add(new Bond(b.from(), b.to(), b.never() ? null : (Double) FASTENED_OHM, b.never())));
        for (Installation i : installations) {
            join(bonds, i, "propeller-anode", "propeller", FASTENED_OHM);
            join(bonds, i, "hull-anode", "engine", WIRED_OHM);
            if (i.part("shaft-brush").isPresent()) {
                join(bonds, i, "shaft", "engine", BRUSHED_OHM);
            }
        }
        if (installations.size() > 1) {
            bonds.add(new Bond(
                    new PartRef(installations.get(0).id(), "engine"),
                    new PartRef(installations.get(1).id(), "engine"),
                    WIRED_OHM,
                    false));
        }
        return bonds;
    }

    private static void join(List<Bond> bonds, Installation i, String from, String to, double ohm) {
        if (i.part(from).isPresent() && i.part(to).isPresent()) {
            bonds.add(new Bond(new PartRef(i.id(), from), new PartRef(i.id(), to), ohm, false));
        }
    }

    private static Cooling cooling(Type type, SplittableRandom random) {
        double u = random.nextDouble();
        return switch (type.arrangement) {
            case SHAFT -> u < 0.2 ? Cooling.RAW_WATER : u < 0.35 ? Cooling.KEEL : Cooling.FRESH_WATER;
            case SAILDRIVE -> u < 0.2 ? Cooling.RAW_WATER : Cooling.FRESH_WATER;
            case STERNDRIVE, POD, JET -> Cooling.FRESH_WATER;
        };
    }

    private static HullMaterial material(Type type, SplittableRandom random) {
        double u = random.nextDouble();
        if (type.arrangement == Arrangement.JET) {
            return u < 0.6 ? HullMaterial.ALUMINIUM : HullMaterial.GRP;
        }
        if (type.arrangement == Arrangement.SHAFT) {
            return u < 0.15 ? HullMaterial.STEEL : u < 0.25 ? HullMaterial.WOOD : HullMaterial.GRP;
        }
        return HullMaterial.GRP;
    }

    private static Winter winter(String use, SplittableRandom random) {
        if (use.equals("liveaboard") || use.equals("work")) {
            return Winter.IN_USE;
        }
        return random.nextDouble() < 0.92 ? Winter.ASHORE : Winter.AFLOAT;
    }

    private static double tenths(double value) {
        return Math.rint(value * 10) / 10;
    }
}

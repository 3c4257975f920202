package sternwright.app.demo;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import sternwright.boat.Arrangement;
import sternwright.boat.Berth;
import sternwright.boat.Boat;
import sternwright.boat.Cooling;
import sternwright.boat.Hull;
import sternwright.boat.HullMaterial;
import sternwright.boat.Installation;
import sternwright.boat.Owner;
import sternwright.boat.Part;
import sternwright.boat.Side;
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

    private final LocalDate today;
    private final List<Berth> berths;

    InventedFleet(LocalDate today, List<Berth> berths) {
        this.today = today;
        this.berths = berths;
    }

    /** The boat of a place in the list; {@code known} is the share of dates its register knows. */
    Boat boat(int index, double known, SplittableRandom random) {
        Type type = type(index);
        String name = InventedNames.boat(index);
        double lengthM = tenths(type.shortestM + (type.longestM - type.shortestM) * random.nextDouble());
        // Multiples of the golden ratio spread evenly, so that every type has both single and twin boats.
        boolean twin = (index * 0.6180339887) % 1 < type.twinShare;
        HullMaterial material = material(type, random);
        List<Installation> installations = installations(type, twin, known, random);
        String use = type.uses.get(random.nextInt(type.uses.size()));
        return new Boat(
                InventedNames.id(name),
                name,
                new Owner(InventedNames.owner(index), "owner-" + (index + 1) + "@example.invalid"),
                berths.get(index % berths.size()).id(),
                use,
                winter(use, random),
                new Hull(
                        lengthM,
                        tenths(0.3 * lengthM + 0.3),
                        tenths(type.arrangement == Arrangement.SAILDRIVE ? 0.16 * lengthM : 0.09 * lengthM),
                        Math.rint(5.2 * lengthM * lengthM * lengthM / 100) * 100,
                        material),
                installations,
                InventedBonds.of(installations),
                null,
                null);
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

    private List<Installation> installations(Type type, boolean twin, double known, SplittableRandom random) {
        int size = random.nextInt(type.models.size());
        Cooling cooling = cooling(type, random);
        boolean folding = type.arrangement == Arrangement.SAILDRIVE && random.nextDouble() < 0.6
                || type.arrangement == Arrangement.SHAFT && random.nextDouble() < 0.15;
        LocalDate built = today.minusYears(9 + random.nextInt(14)).withDayOfYear(1 + random.nextInt(150));
        // Twins are fitted alike.
        List<Part> parts = new InventedParts(type.powersKw.get(size), cooling, built, today, known, random)
                .of(type.arrangement, folding);
        List<Installation> made = new ArrayList<>();
        for (Side side : twin ? List.of(Side.PORT, Side.STARBOARD) : List.of(Side.CENTRELINE)) {
            String id = side == Side.CENTRELINE ? "main" : side == Side.PORT ? "port" : "starboard";
            made.add(new Installation(
                    id, side, type.arrangement, cooling, type.models.get(size), type.powersKw.get(size), parts));
        }
        return made;
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
        return random.nextDouble() < 0.7 ? Winter.ASHORE : Winter.AFLOAT;
    }

    private static double tenths(double value) {
        return Math.rint(value * 10) / 10;
    }
}

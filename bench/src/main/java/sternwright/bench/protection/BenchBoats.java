package sternwright.bench.protection;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import sternwright.app.files.Shipped;
import sternwright.boat.Arrangement;
import sternwright.boat.Berth;
import sternwright.boat.Boat;
import sternwright.boat.Cooling;
import sternwright.boat.Hull;
import sternwright.boat.HullMaterial;
import sternwright.boat.Installation;
import sternwright.boat.Owner;
import sternwright.boat.Part;
import sternwright.boat.ShorePower;
import sternwright.boat.Side;
import sternwright.boat.Water;
import sternwright.boat.Winter;
import sternwright.protection.metal.MetalCatalogue;
import sternwright.protection.register.CircuitFromRegister;

/** Invented boats to measure with. */
final class BenchBoats {
    private BenchBoats() {}

    static CircuitFromRegister builder() {
        return new CircuitFromRegister(Shipped.catalogue(), MetalCatalogue.standard());
    }

    static Berth berth(ShorePower shore) {
        List<Double> year = List.of(7.0, 6.5, 7.0, 8.5, 11.0, 14.0, 16.5, 17.5, 16.5, 14.0, 11.0, 8.5);
        return new Berth("b", "invented berth", 50, new Water(33.0, null, year), null, null, false, shore);
    }

    /** Boats that differ in arrangement and in the areas of their parts. */
    static Boat boat(int n) {
        double size = 0.7 + (n % 37) / 60.0;
        return switch (n % 4) {
            case 0 -> boat(twin("port", size), twin("starboard", size));
            case 1 ->
                boat(installation("main", Arrangement.SAILDRIVE, size, "engine", "leg", "propeller", "leg-anode"));
            case 2 ->
                boat(installation(
                        "main",
                        Arrangement.SHAFT,
                        size,
                        "engine",
                        "shaft",
                        "propeller",
                        "bracket",
                        "shaft-anode",
                        "hull-anode"));
            default ->
                boat(installation("main", Arrangement.POD, size, "engine", "pod-unit", "propeller", "pod-anode"));
        };
    }

    private static Installation twin(String id, double size) {
        return installation(
                id,
                Arrangement.STERNDRIVE,
                size,
                "engine",
                "transom-unit",
                "leg",
                "rams",
                "propeller",
                "leg-anode",
                "transom-anode");
    }

    private static Installation installation(String id, Arrangement arrangement, double size, String... kinds) {
        List<Part> parts = Arrays.stream(kinds).map(k -> part(k, size)).toList();
        return new Installation(id, Side.CENTRELINE, arrangement, Cooling.RAW_WATER, null, null, parts);
    }

    private static Part part(String kind, double size) {
        Double area = kind.equals("propeller") ? (Double) (0.12 * size) : null;
        return new Part(kind, kind, null, null, null, null, 1, null, area, null, null, Set.of(), Map.of());
    }

    private static Boat boat(Installation... installations) {
        return new Boat(
                "invented",
                "Invented",
                new Owner("nobody", null),
                "b",
                "cruising",
                Winter.AFLOAT,
                new Hull(11, 3.6, 1.9, 8000, HullMaterial.GRP),
                Arrays.asList(installations),
                List.of(),
                null,
                null);
    }
}

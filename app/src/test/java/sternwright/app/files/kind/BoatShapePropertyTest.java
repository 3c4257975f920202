package sternwright.app.files.kind;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sternwright.app.files.problem.Problem;
import sternwright.app.files.shape.Reading;
import sternwright.app.files.shape.Yaml;
import sternwright.app.files.template.BoatText;
import sternwright.boat.Arrangement;
import sternwright.boat.Boat;
import sternwright.boat.Bond;
import sternwright.boat.Cooling;
import sternwright.boat.Hull;
import sternwright.boat.HullMaterial;
import sternwright.boat.Installation;
import sternwright.boat.Owner;
import sternwright.boat.Part;
import sternwright.boat.PartRef;
import sternwright.boat.Side;
import sternwright.boat.Winter;

/** Any boat is written so that reading gives the same boat, whatever her people are called. */
class BoatShapePropertyTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    /** Texts that a careless writer of YAML gets wrong. */
    private static final List<String> TEXTS = List.of(
            "Tern",
            "No",
            "yes",
            "null",
            "~",
            "2021",
            "1e3",
            "0x1F",
            "2021-09-30",
            "a: b",
            "# not a comment",
            "- dash",
            "'single' and \"double\"",
            "two\nlines",
            "trailing ",
            " leading",
            "{brace}",
            "[bracket",
            "*star & ampersand",
            "100 %",
            "%directive",
            "@at",
            "Größe, Ærø, 船",
            "tab\tinside",
            "back\\slash",
            "x".repeat(200),
            "word ".repeat(40).strip());

    static IntStream seeds() {
        return IntStream.range(0, 60);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void whatIsWrittenIsReadBack(int seed) {
        Boat boat = boat(new Random(seed));
        String text = BoatText.plain(boat);
        List<Problem> problems = new ArrayList<>();
        var read = Yaml.read(text, BoatShape.BOAT, new Reading("b.yaml", TODAY), problems);
        assertNotNull(read, () -> problems + "\n" + text);
        assertEquals(boat, Objects.requireNonNull(read).value());
    }

    private static Boat boat(Random r) {
        List<Installation> installations = IntStream.range(0, 1 + r.nextInt(3))
                .mapToObj(i -> installation(r, "i" + i))
                .toList();
        List<Bond> bonds = IntStream.range(0, r.nextInt(4))
                .mapToObj(i ->
                        new Bond(new PartRef("i0", "p0"), new PartRef("i0", "p" + (i + 1)), number(r), r.nextBoolean()))
                .toList();
        return new Boat(
                "b" + r.nextInt(1000),
                text(r),
                new Owner(text(r), r.nextBoolean() ? text(r) : null),
                "berth-1",
                "use.2",
                pick(r, Winter.values()),
                new Hull(
                        3 + r.nextInt(900) / 10.0,
                        2.345,
                        0.1 + r.nextDouble(),
                        1 + r.nextInt(90_000),
                        pick(r, HullMaterial.values())),
                installations,
                bonds,
                r.nextBoolean() ? "own" : null,
                r.nextBoolean() ? text(r) : null);
    }

    private static Installation installation(Random r, String id) {
        List<Part> parts =
                IntStream.range(0, 1 + r.nextInt(12)).mapToObj(i -> part(r, i)).toList();
        return new Installation(
                id,
                pick(r, Side.values()),
                pick(r, Arrangement.values()),
                pick(r, Cooling.values()),
                r.nextBoolean() ? text(r) : null,
                number(r),
                parts);
    }

    private static Part part(Random r, int i) {
        Set<String> conditions = new HashSet<>();
        Map<String, Double> figures = new HashMap<>();
        if (r.nextInt(4) == 0) {
            conditions.add("contaminated");
            conditions.add("c" + r.nextInt(9));
            figures.put("oil-l", r.nextDouble() * 10);
            figures.put("torque-nm", 1.0 * r.nextInt(90));
        }
        return new Part(
                "p" + i,
                "kind-" + r.nextInt(20),
                i > 0 && r.nextBoolean() ? "p" + (i - 1) : null,
                r.nextBoolean() ? TODAY.minusDays(r.nextInt(9000)) : null,
                number(r),
                number(r),
                List.of(1.0, 1.5, 2.5).get(r.nextInt(3)),
                r.nextBoolean() ? "bronze" : null,
                number(r),
                number(r),
                r.nextBoolean() ? r.nextDouble() : null,
                conditions,
                figures);
    }

    private static @Nullable Double number(Random r) {
        return switch (r.nextInt(4)) {
            case 0 -> null;
            case 1 -> 1.0 + r.nextInt(500);
            case 2 -> 1e-7 + r.nextDouble() * 1e-4;
            default -> 0.01 + r.nextDouble() * 1000;
        };
    }

    private static String text(Random r) {
        return TEXTS.get(r.nextInt(TEXTS.size()));
    }

    private static <T> T pick(Random r, T[] values) {
        return values[r.nextInt(values.length)];
    }
}

package sternwright.app.paper.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import sternwright.boat.Arrangement;
import sternwright.boat.Cooling;
import sternwright.boat.Installation;
import sternwright.boat.Part;
import sternwright.boat.Side;

class ElevationTest {
    @Test
    void everyKindOfTheCatalogueIsDrawnInSomeArrangement() throws IOException {
        Set<String> missing = new TreeSet<>(catalogue());
        for (Arrangement a : Arrangement.values()) {
            all(a).parts().forEach(p -> missing.remove(p.kind()));
        }
        assertTrue(missing.isEmpty(), "no shape in elevation.svg for " + missing);
    }

    /** Written to target/paper so that a person can look. */
    @ParameterizedTest
    @EnumSource(Arrangement.class)
    void callouts(Arrangement arrangement) throws IOException {
        Installation all = all(arrangement);
        Map<String, List<Integer>> labels = IntStream.range(0, all.parts().size())
                .boxed()
                .collect(Collectors.toMap(i -> all.parts().get(i).id(), i -> List.of(i + 1)));
        String svg = Elevation.of(all, labels, "all parts").svg();
        Path dir = Files.createDirectories(Path.of("target/paper"));
        Files.writeString(dir.resolve("elevation-" + arrangement + ".svg"), svg);
        marksDoNotOverlap(svg);
        assertTrue(svg.contains("alt=\"all parts\""));
        assertFalse(svg.contains("data-"));
    }

    @Test
    void whatTheInstallationHasNotIsLeftOut() {
        String svg = Elevation.of(only(Arrangement.SAILDRIVE, "engine"), Map.of(), "")
                .svg();
        assertEquals(1, svg.split("class=\"part\"", -1).length - 1);
    }

    @Test
    void aPartWithoutShapeIsNamed() {
        Elevation drawn =
                Elevation.of(only(Arrangement.JET, "bow-thruster"), Map.of("bow-thruster", List.of(4, 2)), "");
        assertEquals(List.of("bow thruster 2, 4"), drawn.missing());
    }

    private static void marksDoNotOverlap(String svg) {
        record Mark(double x, double y, double width) {}
        Matcher m = Pattern.compile("<rect [^>]*?width=\"([\\d.]+)\" x=\"([\\d.-]+)\" y=\"([\\d.]+)\"")
                .matcher(svg);
        List<Mark> marks = new ArrayList<>();
        while (m.find()) {
            marks.add(new Mark(number(m, 2), number(m, 3), number(m, 1)));
        }
        assertTrue(marks.size() > 10, "found the marks");
        for (Mark a : marks) {
            for (Mark b : marks) {
                assertTrue(
                        a == b || a.y() != b.y() || a.x() + a.width() <= b.x() || b.x() + b.width() <= a.x(),
                        a + " over " + b);
            }
            assertTrue(a.x() >= 0 && a.x() + a.width() <= 680, a + " runs out of the drawing");
        }
    }

    private static double number(Matcher m, int group) {
        return Double.parseDouble(Objects.requireNonNull(m.group(group)));
    }

    static Installation only(Arrangement a, String kind) {
        return with(a, List.of(Part.of(kind, kind)));
    }

    private static Installation with(Arrangement a, List<Part> parts) {
        return new Installation("main", Side.CENTRELINE, a, Cooling.FRESH_WATER, null, null, parts);
    }

    static Installation all(Arrangement a) {
        try {
            List<Part> parts = catalogue().stream().map(k -> Part.of(k, k)).toList();
            Installation every = with(a, parts);
            List<String> undrawn = Elevation.of(
                            every, parts.stream().collect(Collectors.toMap(Part::id, p -> List.of(1))), "")
                    .missing();
            return with(
                    a,
                    parts.stream()
                            .filter(p -> !undrawn.contains(p.kind().replace('-', ' ') + " 1"))
                            .toList());
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static List<String> catalogue() throws IOException {
        try (InputStream in = ElevationTest.class.getResourceAsStream("/sternwright/catalogue.yaml")) {
            String text = new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
            Matcher m = Pattern.compile("\\{id: ([a-z-]+),").matcher(text);
            List<String> kinds = new ArrayList<>();
            while (m.find()) {
                kinds.add(m.group(1));
            }
            return kinds;
        }
    }
}

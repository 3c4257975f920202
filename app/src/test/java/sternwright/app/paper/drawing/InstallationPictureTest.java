package sternwright.app.paper.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import sternwright.app.paper.drawing.PartMark.Sign;
import sternwright.boat.Arrangement;
import sternwright.boat.Installation;
import sternwright.boat.Part;

class InstallationPictureTest {
    private static final Pattern RECT = Pattern.compile(
            "<rect [^>]*?height=\"([\\d.]+)\"[^>]*?width=\"([\\d.]+)\" x=\"([-\\d.]+)\" y=\"([-\\d.]+)\"");

    /** Written to target/paper so that a person can look. */
    @ParameterizedTest
    @EnumSource(Arrangement.class)
    void everyMarkLeadsToItsPartAndNoTwoLettersOverlap(Arrangement arrangement) throws Exception {
        Installation all = ElevationTest.all(arrangement);
        List<PartMark> marks = marks(all.parts());
        InstallationPicture picture = InstallationPicture.of(all, marks, "all parts <of> the installation");
        write(arrangement + "-wide", picture.wide());
        write(arrangement + "-narrow", picture.narrow());
        for (String svg : List.of(picture.wide(), picture.narrow())) {
            Document document = read(svg);
            List<String> targets = new ArrayList<>();
            for (int i = 0; i < document.getElementsByTagName("a").getLength(); i++) {
                Element a = (Element) document.getElementsByTagName("a").item(i);
                targets.add(a.getAttribute("href"));
                assertFalse(a.getAttribute("aria-label").isBlank());
            }
            for (PartMark mark : marks) {
                assertEquals(
                        picture.missing().contains(mark) ? 0 : 1,
                        targets.stream().filter(mark.href()::equals).count(),
                        mark.toString());
            }
            assertFalse(svg.contains("data-"));
            assertFalse(svg.contains("style="), "the content policy of the pages refuses it");
        }
        lettersDoNotOverlap(picture.wide());
    }

    @Test
    void twoPartsOfOneKindHaveTwoMarks() {
        Part a = Part.of("anode-1", "hull-anode");
        Part b = Part.of("anode-2", "hull-anode");
        Installation two = ElevationTest.only(Arrangement.SHAFT, "engine");
        Installation with =
                new Installation(two.id(), two.side(), two.arrangement(), two.cooling(), null, null, List.of(a, b));
        InstallationPicture picture = InstallationPicture.of(with, marks(List.of(a, b)), "two");
        assertTrue(picture.wide().contains("#part-anode-1") && picture.wide().contains("#part-anode-2"));
        assertEquals(List.of(), picture.missing());
    }

    @Test
    void aPartWithoutAShapeIsNamed() {
        Part odd = Part.of("odd", "no-such-kind");
        Installation one = ElevationTest.only(Arrangement.JET, "engine");
        Installation with =
                new Installation(one.id(), one.side(), one.arrangement(), one.cooling(), null, null, List.of(odd));
        assertEquals(
                1,
                InstallationPicture.of(with, marks(List.of(odd)), "odd")
                        .missing()
                        .size());
    }

    private static List<PartMark> marks(List<Part> parts) {
        List<PartMark> marks = new ArrayList<>();
        Sign[] signs = Sign.values();
        for (int i = 0; i < parts.size(); i++) {
            String key = i < 26 ? String.valueOf((char) ('A' + i)) : "A" + (char) ('A' + i - 26);
            marks.add(new PartMark(
                    parts.get(i).id(),
                    key,
                    signs[i % signs.length],
                    "words",
                    "#part-" + parts.get(i).id()));
        }
        return marks;
    }

    private static void lettersDoNotOverlap(String svg) {
        List<double[]> boxes = new ArrayList<>();
        Matcher m = RECT.matcher(svg);
        while (m.find()) {
            boxes.add(new double[] {
                Double.parseDouble(m.group(3)),
                Double.parseDouble(m.group(4)),
                Double.parseDouble(m.group(2)),
                Double.parseDouble(m.group(1))
            });
        }
        assertFalse(boxes.isEmpty());
        for (int i = 0; i < boxes.size(); i++) {
            for (int j = 0; j < i; j++) {
                double[] a = boxes.get(i);
                double[] b = boxes.get(j);
                boolean apart =
                        a[0] + a[2] <= b[0] || b[0] + b[2] <= a[0] || a[1] + a[3] <= b[1] || b[1] + b[3] <= a[1];
                assertTrue(apart, "letters " + i + " and " + j + " overlap");
            }
        }
    }

    private static Document read(String svg) throws Exception {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new java.io.ByteArrayInputStream(svg.getBytes(java.nio.charset.StandardCharsets.UTF_8)));
    }

    private static void write(String name, String svg) throws IOException {
        Files.writeString(Files.createDirectories(Path.of("target/paper")).resolve("picture-" + name + ".svg"), svg);
    }
}

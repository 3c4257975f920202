package sternwright.app.paper.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Both names stay readable wherever the lines end. */
class CourseDrawingTest {
    private static final double LINE_HEIGHT = 13;

    @ParameterizedTest
    @CsvSource({"0, 1", "300, 1", "300, 0.999", "300, 0.95", "300, 0.5", "300, 0.01", "1e6, 0", "1e6, 1"})
    void theNamesNeverStandOnEachOther(double cost, double share) {
        String svg = svg(30, new CourseDrawing.Point(0, cost * 1.5, 0), new CourseDrawing.Point(9, cost, cost * share));
        assertTrue(height(svg, "no plan below") - height(svg, "best plan") >= LINE_HEIGHT, svg);
    }

    @Test
    void aPlanProvenAtOnceIsALevelLineAsLongAsTheSearch() {
        String svg = svg(30, new CourseDrawing.Point(0, 300, 300));
        Matcher line = Pattern.compile("M72\\.0 [0-9.]+H([0-9.]+)").matcher(svg);
        assertTrue(line.find(), svg);
        assertEquals(72 + (316 - 72) / 2.0 + 3, Double.parseDouble(line.group(1)), 0.1);
        assertTrue(svg.contains(">0.0<") && svg.contains(">300.0<"), svg);
    }

    private static String svg(double spentS, CourseDrawing.Point... points) {
        return new CourseDrawing(List.of(points), spentS, 60, Double::toString)
                .svg("how it went", "best plan", "no plan below", "0 s", "60 s");
    }

    private static double height(String svg, String words) {
        Matcher at = Pattern.compile(" y=\"([0-9.]+)\"[^>]*>" + words).matcher(svg);
        assertTrue(at.find(), svg);
        return Double.parseDouble(at.group(1));
    }
}

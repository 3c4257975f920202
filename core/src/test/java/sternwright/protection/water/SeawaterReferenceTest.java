package sternwright.protection.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Practical Salinity Scale 1978: check values of UNESCO technical papers in marine science 44 (Fofonoff and Millard 1983) and a table of
 * resistivities computed independently (reference/protection/water-conductivity-checks.json among the test resources).
 */
class SeawaterReferenceTest {
    private static JsonNode checks() throws IOException {
        try (InputStream in = Objects.requireNonNull(SeawaterReferenceTest.class.getResourceAsStream(
                "/reference/protection/water-conductivity-checks.json"))) {
            return JsonMapper.shared().readTree(in);
        }
    }

    @Test
    void publishedCheckValues() throws IOException {
        for (JsonNode c : checks().get("publishedCheckValues")) {
            double s = Seawater.salinity(
                    c.get("conductivityRatio").asDouble(),
                    c.get("temperatureC").asDouble(),
                    c.get("pressureDbar").asDouble());
            assertEquals(c.get("salinity").asDouble(), s, 1e-5);
        }
    }

    @Test
    void resistivityTableWithTheFreshWaterExtension() throws IOException {
        for (JsonNode row : checks().get("computedResistivityOhmMAtSurface")) {
            double s = row.get("salinity").asDouble();
            row.get("byTemperatureC").properties().forEach(p -> {
                double rho = Seawater.resistivityOhmM(s, Double.parseDouble(p.getKey()));
                assertEquals(p.getValue().asDouble(), rho, 1e-4 * rho, s + " at " + p.getKey());
            });
        }
    }

    @Test
    void theExampleAtFourteenDegreesIsTheFigureOfTwentyFive() {
        assertEquals(0.2547, Seawater.resistivityOhmM(25, 25), 1e-4);
        assertEquals(0.323, Seawater.resistivityOhmM(25, 14), 1e-3);
    }

    @Test
    void resistivityAndSalinityAreInverse() {
        for (double s : new double[] {0.1, 0.5, 1.5, 1.99, 2.01, 10, 35}) {
            for (double t : new double[] {0, 15, 30}) {
                assertEquals(s, Seawater.salinityOfResistivity(Seawater.resistivityOhmM(s, t), t), 1e-6);
            }
        }
    }

    @Test
    void nonsenseIsRefusedInWords() {
        assertTrue(String.valueOf(assertThrows(IllegalArgumentException.class, () -> Seawater.resistivityOhmM(35, 59))
                        .getMessage())
                .contains("°F"));
        assertThrows(IllegalArgumentException.class, () -> Seawater.resistivityOhmM(-1, 15));
        assertThrows(IllegalArgumentException.class, () -> Seawater.resistivityOhmM(Double.NaN, 15));
        assertThrows(IllegalArgumentException.class, () -> Seawater.salinityOfResistivity(0, 15));
    }
}

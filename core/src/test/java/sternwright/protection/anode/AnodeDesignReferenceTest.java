package sternwright.protection.anode;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.io.InputStream;
import java.util.Objects;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import sternwright.protection.water.WaterResistance;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Published worked examples of anode design; sources in reference/protection/anode-design-checks.json among the test resources. */
class AnodeDesignReferenceTest {
    private static JsonNode check(String id) {
        try (InputStream in = Objects.requireNonNull(
                AnodeDesignReferenceTest.class.getResourceAsStream("/reference/protection/anode-design-checks.json"))) {
            for (JsonNode c : JsonMapper.shared().readTree(in).get("checks")) {
                if (c.get("id").asString().startsWith(id)) {
                    return c;
                }
            }
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
        throw new IllegalStateException(id);
    }

    private static ToDoubleFunction<String> in(JsonNode c) {
        return name -> c.get("inputs").get(name).asDouble();
    }

    private static void equal(JsonNode c, String name, double actual) {
        double expected = c.get("outputs").get(name).asDouble();
        assertEquals(expected, actual, 1e-6 * Math.abs(expected), name);
    }

    @Test
    void jacketByDnvRpB401() {
        JsonNode c = check("H1");
        ToDoubleFunction<String> x = in(c);
        double years = x.applyAsDouble("designLifeYears");
        CoatingBreakdown paint = CoatingBreakdown.CATEGORY_III;
        double area = x.applyAsDouble("areaM2");
        double mean = AnodeDesign.currentA(area, x.applyAsDouble("meanCurrentDensityAPerM2"), paint.mean(years));
        double last = AnodeDesign.currentA(area, x.applyAsDouble("finalCurrentDensityAPerM2"), paint.at(years));
        equal(c, "breakdownInitial", paint.at(0));
        equal(c, "breakdownMean", paint.mean(years));
        equal(c, "breakdownFinal", paint.at(years));
        equal(
                c,
                "initialCurrentA",
                AnodeDesign.currentA(area, x.applyAsDouble("initialCurrentDensityAPerM2"), paint.at(0)));
        equal(c, "meanCurrentA", mean);
        equal(c, "finalCurrentA", last);
        double mass =
                AnodeDesign.netMassKg(mean, years, x.applyAsDouble("utilisation"), x.applyAsDouble("capacityAhPerKg"));
        // The source rounds the mass to ten kilograms.
        assertEquals(c.get("outputs").get("netMassKg").asDouble(), mass, 1);
        equal(c, "countByMass", AnodeDesign.count(mass, x.applyAsDouble("anodeNetMassKg")));
        double ohm = WaterResistance.longStandOff(
                x.applyAsDouble("resistivityOhmM"), x.applyAsDouble("anodeLengthM"), x.applyAsDouble("anodeRadiusM"));
        double each = AnodeDesign.anodeCurrentA(
                x.applyAsDouble("protectionPotentialV"), x.applyAsDouble("anodePotentialV"), ohm);
        equal(c, "anodeResistanceOhm", ohm);
        equal(c, "anodeCurrentA", each);
        equal(c, "countByFinalCurrent", AnodeDesign.count(last, each));
    }

    @Test
    void shipHullByAbs2017() {
        JsonNode c = check("H2");
        ToDoubleFunction<String> x = in(c);
        double ohm = WaterResistance.longFlush(
                x.applyAsDouble("resistivityOhmM"), x.applyAsDouble("anodeLengthM"), x.applyAsDouble("anodeWidthM"));
        equal(c, "anodeResistanceOhm", ohm);
        equal(
                c,
                "anodeCurrentA",
                AnodeDesign.anodeCurrentA(
                        x.applyAsDouble("protectionPotentialV"), x.applyAsDouble("anodePotentialV"), ohm));
        equal(
                c,
                "netMassKg",
                AnodeDesign.netMassKg(
                        x.applyAsDouble("meanCurrentA"),
                        x.applyAsDouble("designLifeYears"),
                        x.applyAsDouble("utilisation"),
                        x.applyAsDouble("capacityAhPerKg")));
    }

    @Test
    void pipelinesByDnvRpF103() {
        for (String id : new String[] {"H3", "H4"}) {
            JsonNode c = check(id);
            ToDoubleFunction<String> x = in(c);
            double area = Math.PI * x.applyAsDouble("outerDiameterM") * x.applyAsDouble("lengthM");
            double years = x.applyAsDouble("designLifeYears");
            CoatingBreakdown paint =
                    new CoatingBreakdown(x.applyAsDouble("coatingA"), x.applyAsDouble("coatingBPerYear"));
            double mean = AnodeDesign.currentA(area, x.applyAsDouble("meanCurrentDensityAPerM2"), paint.mean(years));
            equal(c, "areaM2", area);
            equal(c, "breakdownMean", paint.mean(years));
            equal(c, "meanCurrentA", mean);
            equal(
                    c,
                    "netMassKg",
                    AnodeDesign.netMassKg(
                            mean, years, x.applyAsDouble("utilisation"), x.applyAsDouble("capacityAhPerKg")));
        }
    }

    @Test
    void magnesiumMassByMilHandbook() {
        JsonNode c = check("H6");
        // 8.8 lb per ampere-year at efficiency 0.50 is already the practical figure: 0.4536 kg/lb, 8760 h.
        double capacity = 8760 / (8.8 * 0.45359237) / 1;
        double massKg = AnodeDesign.netMassKg(0.73, 15, 0.5, capacity);
        assertEquals(c.get("outputs").get("massLb").asDouble(), massKg / 0.45359237, 0.01);
    }

    @Test
    void paintThatIsGoneBeforeTheEnd() {
        // DNV-RP-B401 6.4: f = 1 - (1 - a)^2 / (2 b t); at the moment it is gone both forms agree.
        CoatingBreakdown paint = CoatingBreakdown.CATEGORY_I;
        assertEquals((1 + 0.1) / 2, paint.mean(9), 1e-12);
        assertEquals(1 - 0.81 / (2 * 0.1 * 20), paint.mean(20), 1e-12);
        assertEquals(1, paint.at(20));
    }

    @Test
    void lifeAndMassAreTheSameFormula() {
        double mass = AnodeDesign.netMassKg(0.05, 2, 0.8, 780);
        assertEquals(2, AnodeDesign.lifeYears(mass, 0.8, 780, 0.05), 1e-12);
        // One ampere for a year wastes 11.2 kg of zinc at 780 Ah/kg.
        assertEquals(11.2, AnodeDesign.netMassKg(1, 1, 1, 780), 0.05);
        assertThrows(IllegalArgumentException.class, () -> AnodeDesign.netMassKg(1, 1, 0, 780));
    }
}

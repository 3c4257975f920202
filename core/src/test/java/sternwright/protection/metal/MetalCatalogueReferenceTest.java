package sternwright.protection.metal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Free potentials, capacities and electrodes against published figures. */
class MetalCatalogueReferenceTest {
    private final MetalCatalogue metals = MetalCatalogue.standard();

    @Test
    void freePotentialsStandInTheOrderOfTheGalvanicSeries() {
        // US Naval Research Laboratory data file of the galvanic series in flowing seawater, most active first.
        List<String> series = List.of(
                "magnesium-anode",
                "zinc-anode",
                "aluminium-hull",
                "mild-steel",
                "stainless-active",
                "naval-brass",
                "aluminium-bronze",
                "bronze",
                "manganese-bronze",
                "copper-nickel",
                "silicon-bronze",
                "lead",
                "nickel-aluminium-bronze",
                "titanium",
                "stainless-304",
                "stainless-passive",
                "graphite");
        for (int i = 1; i < series.size(); i++) {
            double before = metals.metal(series.get(i - 1)).freePotentialV(false);
            assertTrue(before < metals.metal(series.get(i)).freePotentialV(false), series.get(i));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "zinc-anode, -1.03",
        "mild-steel, -0.61",
        "copper, -0.36",
        "bronze, -0.31",
        "stainless-passive, -0.05",
        "titanium, -0.10"
    })
    void freePotentialsByTheSeriesAgainstCalomel(String metal, double calomelV) {
        double v = metals.metal(metal).freePotentialV(false);
        assertEquals(calomelV, ReferenceElectrode.CALOMEL.fromSilverChlorideV(v), 0.03);
    }

    @Test
    void capacitiesStayBelowFaraday() {
        // Theoretical capacity z F / (3600 M): zinc 820, aluminium 2980, magnesium 2205 Ah/kg.
        double faraday = 96485.33;
        assertEquals(820, 2 * faraday / 3600 / 0.06538, 1);
        assertEquals(2980, 3 * faraday / 3600 / 0.026982, 2);
        assertEquals(2205, 2 * faraday / 3600 / 0.024305, 1);
        assertTrue(capacity("zinc-anode", 20) < 820);
        assertTrue(capacity("aluminium-anode", 20) < 2980);
        assertTrue(capacity("magnesium-anode", 20) < 2205);
        assertEquals(780, capacity("zinc-anode", 30));
        // ABS 2017: Q = 2000 - 27 (T - 20) Ah/kg above 20 degrees.
        assertEquals(1730, capacity("aluminium-anode", 30));
    }

    private double capacity(String id, double temperatureC) {
        AnodeAlloy alloy = metals.metal(id).alloy();
        return alloy == null ? Double.NaN : alloy.capacityAhPerKg(temperatureC);
    }

    @Test
    void electrodesAsTheOffshoreCodesSetThemSideBySide() {
        // -0.80 V Ag/AgCl = -0.85 V CSE (rounded) = +0.25 V zinc (rounded).
        assertEquals(-0.80, ReferenceElectrode.COPPER_SULPHATE.toSilverChlorideV(-0.866), 1e-9);
        assertEquals(-0.80, ReferenceElectrode.ZINC.toSilverChlorideV(0.23), 1e-9);
        assertEquals(-0.619, ReferenceElectrode.CALOMEL.toSilverChlorideV(-0.61), 1e-9);
        for (ReferenceElectrode e : ReferenceElectrode.values()) {
            assertEquals(-0.9, e.toSilverChlorideV(e.fromSilverChlorideV(-0.9)), 1e-12);
            assertEquals(e, ReferenceElectrode.find(e.symbol()).orElseThrow());
        }
    }

    @Test
    void anUnknownAlloyNamesItsNearest() {
        IllegalArgumentException e = assertThrows(IllegalArgumentException.class, () -> metals.metal("alumnium-anode"));
        assertTrue(String.valueOf(e.getMessage()).contains("Did you mean \"aluminium-anode\"?"), e.getMessage());
    }

    @Test
    void everyFigureHasItsSource() {
        for (Metal m : metals.metals()) {
            assertTrue(m.freeSource().line().length() > 10, m.id());
            assertTrue(m.curveSource().line().length() > 10, m.id());
            assertTrue(m.alloy() == null || m.alloy().source().line().length() > 10, m.id());
        }
    }
}

package sternwright.boat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HullSenseTest {
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "sailing yacht, 10, 3.3, 1.6, 5500",
        "light sports boat, 6.2, 2.3, 0.6, 1200",
        "canal boat, 18, 2.08, 0.6, 17000",
        "catamaran, 12, 6.8, 1.1, 9000",
        "motor yacht, 15, 4.6, 1.3, 20000",
        "long keel steel ketch, 13, 3.9, 1.9, 19000"
    })
    void boatsAsTheyAre(String kind, double length, double beam, double draught, double mass) {
        assertEquals(List.of(), HullSense.of(new Hull(length, beam, draught, mass, HullMaterial.GRP)), kind);
    }

    @ParameterizedTest(name = "{4} {5}")
    @CsvSource({
        "10, 3.3, 1.6, 55000, mass-kg, true", // a nought too many: the box holds 54,120 kg
        "10, 3.3, 1.6, 40000, mass-kg, false",
        "10, 3.3, 1.6, 550, mass-kg, false", // a nought too few
        "10, 33, 1.6, 5500, beam-m, true",
        "10, 0.33, 1.6, 3000, beam-m, false",
        "10, 3.3, 16, 5500, draught-m, false"
    })
    void slipsOfThePen(double length, double beam, double draught, double mass, String field, boolean impossible) {
        List<HullSense.Odd> odd = HullSense.of(new Hull(length, beam, draught, mass, HullMaterial.GRP));
        assertEquals(1, odd.size(), () -> odd.toString());
        assertEquals(field, odd.get(0).field());
        assertEquals(impossible, odd.get(0).impossible());
    }

    @Test
    void theBoundIsTheWaterInTheBox() {
        HullSense.Odd odd =
                HullSense.of(new Hull(10, 3, 1, 30_751, HullMaterial.GRP)).get(0);
        assertTrue(odd.expected().contains("30800 kg"), odd::expected);
        assertTrue(HullSense.of(new Hull(10, 3, 1, 24_999, HullMaterial.GRP)).isEmpty());
    }
}

package sternwright.protection.water;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** Anode resistances of published worked examples. */
class WaterResistanceReferenceTest {
    @Test
    void jacketExampleOfDnvRpB401() {
        assertEquals(0.105598926, WaterResistance.longStandOff(0.30, 1.5, 0.08), 1e-8);
    }

    @Test
    void flushHullAnodeOfAbs2017() {
        assertEquals(0.328645161, WaterResistance.longFlush(0.2547, 0.65, 0.125), 1e-8);
    }

    @Test
    void rodOfMilHandbook1004() {
        // MIL-HDBK-1004/10: R = (22 ohm cm / 5 ft) x 0.0234 = 0.103 ohm for an anode of 2 x 60 inches.
        assertEquals(0.103, WaterResistance.longStandOff(0.22, 60 * 0.0254, 0.0254), 0.005);
    }

    @Test
    void shapesAgreeWhereTheyMeet() {
        assertEquals(WaterResistance.sphere(1, 0.1) * 2, WaterResistance.halfSphere(1, 0.1), 1e-12);
        double slender = WaterResistance.longStandOff(1, 10, 0.1);
        assertEquals(slender, WaterResistance.shortStandOff(1, 10, 0.1), 0.01 * slender);
        // A disc free on both sides, rho / 8a, against the compact rule with both faces.
        assertEquals(WaterResistance.disc(1, 0.1) / 2, WaterResistance.compact(1, 2 * Math.PI * 0.01), 0.01);
    }
}

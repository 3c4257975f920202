package sternwright.protection.judgement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sternwright.finding.Severity;
import sternwright.protection.metal.MetalCatalogue;
import sternwright.protection.metal.ReferenceElectrode;

class PotentialJudgeTest {
    // Limits: DNV-RP-B401 and ABS 2017 (steel -0.80), EN 12473 from memory (strong steel -0.83 to -0.95), trade
    // (aluminium -0.90 to -1.10).
    @ParameterizedTest
    @CsvSource({
        "mild-steel, -0.79, UNDER",
        "mild-steel, -0.80, PROTECTED",
        "mild-steel, -1.11, OVER",
        "high-strength-steel, -0.82, UNDER",
        "high-strength-steel, -0.90, PROTECTED",
        "high-strength-steel, -0.96, OVER",
        "aluminium-casting, -0.77, UNDER",
        "aluminium-casting, -0.97, PROTECTED",
        "aluminium-casting, -1.304, OVER",
        "bronze, -1.304, PROTECTED",
        "stainless-passive, -0.2, UNDER",
        "zinc-anode, -1.0, NOT_JUDGED"
    })
    void publishedLimits(String metal, double v, Protection expected) {
        MetalJudgement j = PotentialJudge.judge(MetalCatalogue.standard().metal(metal), v, false);
        assertEquals(expected, j.state());
        assertTrue(expected == Protection.NOT_JUDGED || j.source() != null);
    }

    @Test
    void baseMetalWithoutProtectionIsActedOnNobleOnlyWhenDriven() {
        assertEquals(
                Severity.ACT,
                PotentialJudge.judge(MetalCatalogue.standard().metal("aluminium-casting"), -0.71, false)
                        .severity());
        assertEquals(
                Severity.FINE,
                PotentialJudge.judge(MetalCatalogue.standard().metal("bronze"), -0.3, false)
                        .severity());
        assertEquals(
                Severity.ACT,
                PotentialJudge.judge(MetalCatalogue.standard().metal("bronze"), -0.064, false)
                        .severity());
    }

    @Test
    void freshWaterIsJudgedByTheShift() {
        double free = MetalCatalogue.standard().metal("aluminium-casting").freePotentialV(true);
        assertEquals(
                Protection.UNDER,
                PotentialJudge.judge(MetalCatalogue.standard().metal("aluminium-casting"), free - 0.19, true)
                        .state());
        assertEquals(
                Protection.PROTECTED,
                PotentialJudge.judge(MetalCatalogue.standard().metal("aluminium-casting"), free - 0.21, true)
                        .state());
    }

    @Test
    void aReadingNeedsItsElectrodeAndAUnitThatFits() {
        assertEquals(-0.97, PotentialReading.of(-970, "mV", "Ag/AgCl/sw").silverChlorideV(), 1e-12);
        assertEquals(-0.97, PotentialReading.of(0.06, "V", "Zn").silverChlorideV(), 1e-12);
        assertEquals(
                ReferenceElectrode.CALOMEL,
                PotentialReading.of(-0.6, "V", "SCE").electrode());
        refused(-970, "V", "Ag/AgCl/sw", "was it -970 mV?");
        refused(-0.97, "mV", "Ag/AgCl/sw", "was it -0.97 V?");
        refused(-0.97, "V", " ", "names no reference electrode");
        refused(-0.97, "V", "lead", "not known");
        refused(Double.NaN, "V", "Zn", "write a number");
        refused(-970, "millivolt", "Zn", "write V or mV");
    }

    private static void refused(double value, String unit, String electrode, String words) {
        IllegalArgumentException e =
                assertThrows(IllegalArgumentException.class, () -> PotentialReading.of(value, unit, electrode));
        assertTrue(String.valueOf(e.getMessage()).contains(words), e.getMessage());
    }
}

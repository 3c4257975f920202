package sternwright.app.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class ProtectionSheetTest {
    @Test
    void unitsAndFormulasArePrintedWithTheirSigns() {
        assertEquals("m\u00b2", ProtectionSheet.signs("m2"));
        assertEquals("0.2 \u03a9 m", ProtectionSheet.signs("0.2 ohm m"));
        assertEquals("0.315 \u00d7 \u03c1", ProtectionSheet.signs("0.315 x rho"));
        assertEquals("(\u22121.006 - \u22121.033)", ProtectionSheet.signs("(-1.006 - -1.033)"));
        assertEquals("DNV-RP-B401, 30-40 m", ProtectionSheet.signs("DNV-RP-B401, 30-40 m"));
    }
}

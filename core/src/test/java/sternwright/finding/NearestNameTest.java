package sternwright.finding;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class NearestNameTest {
    private static final List<String> KINDS = List.of("raw-water-pump", "strainer", "shaft", "shaft-anode");

    @Test
    void findsTheSlipOfThePen() {
        assertEquals(Optional.of("raw-water-pump"), NearestName.of("raw-watr-pmp", KINDS));
        assertEquals(Optional.of("strainer"), NearestName.of("Strainer", KINDS));
        assertEquals(Optional.of("shaft-anode"), NearestName.of("shaft-annode", KINDS));
    }

    @Test
    void staysSilentWhereNothingIsNear() {
        assertEquals(Optional.empty(), NearestName.of("xyzzy", KINDS));
        assertEquals(Optional.empty(), NearestName.of("strainer", List.of()));
    }
}

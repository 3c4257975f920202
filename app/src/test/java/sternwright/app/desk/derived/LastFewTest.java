package sternwright.app.desk.derived;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import org.junit.jupiter.api.Test;

/** Only so many answers are kept, and those that are asked for stay. */
class LastFewTest {
    @Test
    void whatNobodyHasAskedForLongestIsLetGoOfFirst() {
        LastFew<String, Integer> few = new LastFew<>(2);
        assertEquals(1, few.of("hoist", () -> 1));
        assertEquals(2, few.of("place", () -> 2));
        assertEquals(1, few.of("hoist", () -> 9), "worked out once");
        few.keep("crew", 3);
        assertNull(few.find("place"));
        assertEquals(1, few.find("hoist"));
        assertEquals(3, few.find("crew"));
    }
}

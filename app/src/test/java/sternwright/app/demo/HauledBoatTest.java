package sternwright.app.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sternwright.boat.Boat;
import sternwright.boat.Winter;
import sternwright.visit.BoatQuestion;
import sternwright.visit.BoatVisits;
import sternwright.visit.problem.BoatMonth;

/** Visits look for a boat that is hauled every winter where the season does. */
class HauledBoatTest {
    @ParameterizedTest
    @CsvSource({
        "NORTH, 2026-11-10, , true, true",
        "NORTH, 2026-11-10, 2026-11-02, false, true",
        "NORTH, 2026-12-10, , false, true",
        "NORTH, 2027-05-10, , true, true",
        "SOUTH, 2026-05-10, , true, true",
        "SOUTH, 2026-05-10, 2026-05-02, false, true",
        "SOUTH, 2026-06-10, , false, true"
    })
    void theFirstMonth(
            InventedFolder.Where where,
            LocalDate today,
            @Nullable LocalDate ashoreSince,
            boolean afloatPossible,
            boolean ashorePaid) {
        AskedBoats boats = new AskedBoats(where, 8, today);
        List<Boat> hauled = boats.made.boats().stream()
                .filter(b -> b.winter() == Winter.ASHORE)
                .toList();
        assertTrue(hauled.size() > 1);
        for (Boat boat : hauled) {
            BoatQuestion question = boats.question(boat).ashoreSince(ashoreSince);
            BoatMonth first = BoatVisits.of(question).problem().months().get(0);
            assertEquals(afloatPossible, first.afloatPossible(), boat.id());
            assertEquals(ashorePaid, first.ashorePaid(), boat.id());
        }
    }
}

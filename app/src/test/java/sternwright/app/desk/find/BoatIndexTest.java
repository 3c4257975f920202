package sternwright.app.desk.find;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sternwright.app.desk.InventedDesk;
import sternwright.boat.Arrangement;
import sternwright.boat.Boat;
import sternwright.due.Due;
import sternwright.due.DueState;

class BoatIndexTest {
    private final BoatIndex index = BoatIndex.of(InventedDesk.yard(), InventedDesk.dues());

    @ParameterizedTest
    @CsvSource({
        "Søren Ågård, soren agard",
        "Søren Ågård, SOEREN AAGAARD",
        "Schröder, schroeder",
        "Schröder, Schroder",
        "Łódź, lodz",
        "O’Hara, o hara",
        "Großmann, grossmann"
    })
    void lettersTypedInAnotherWayAreTheSame(String written, String typed) {
        String both = Folded.of(written) + " " + Folded.writtenOut(written);
        for (String word : Folded.of(typed).split(" ")) {
            assertTrue(both.contains(word), () -> both + " has no " + word);
        }
    }

    @Test
    void everyBoatIsFoundByNameIdOwnerBerthAndArrangement() {
        for (Boat boat : InventedDesk.yard().boats().values()) {
            for (String words : List.of(
                    boat.name().toUpperCase(Locale.ROOT),
                    boat.id(),
                    boat.owner().name(),
                    boat.berthId(),
                    boat.name() + " "
                            + boat.installations().get(0).arrangement().name())) {
                assertTrue(
                        index.find(BoatQuery.of(words)).stream()
                                .anyMatch(r -> r.boatId().equals(boat.id())),
                        words);
            }
        }
        assertEquals(index.size(), index.find(BoatQuery.of("  ")).size());
        assertEquals(List.of(), index.find(BoatQuery.of("no such boat anywhere")));
    }

    @Test
    void ruleAndStateAreThoseOfTheDueList() {
        Set<String> expected = InventedDesk.dues().stream()
                .filter(d -> d.rule().id().equals("change-engine-oil") && d.state() == DueState.OVERDUE
                        || d.rule().id().equals("change-engine-oil") && d.state() == DueState.DUE)
                .map(Due::boatId)
                .collect(Collectors.toSet());
        Set<String> found = index
                .find(new BoatQuery(
                        "", Set.of(), Set.of(), Set.of("change-engine-oil"), Set.of(DueState.OVERDUE, DueState.DUE)))
                .stream()
                .map(BoatRow::boatId)
                .collect(Collectors.toSet());
        assertFalse(expected.isEmpty(), "the invented yard has oil to change");
        assertEquals(expected, found);
        assertEquals(List.of(), index.find(new BoatQuery("", Set.of(), Set.of(), Set.of("no-such-rule"), Set.of())));
    }

    @Test
    void rowsSayWhatFallsDueFirst() {
        for (BoatRow row : index.find(BoatQuery.of(""))) {
            List<Due> own = InventedDesk.dues().stream()
                    .filter(d -> d.boatId().equals(row.boatId()))
                    .toList();
            assertEquals(own.stream().filter(d -> d.state() == DueState.OVERDUE).count(), row.overdue());
            BoatRow.Next next = row.next();
            assertTrue(next == null
                    || own.stream()
                            .filter(d -> d.state() != DueState.REFUSED && d.state() != DueState.EVERY_VISIT)
                            .noneMatch(d -> d.dueOn().isBefore(next.dueOn())));
        }
        assertTrue(index.find(new BoatQuery("", Set.of(Arrangement.SAILDRIVE), Set.of(), Set.of(), Set.of())).stream()
                .allMatch(r -> r.arrangements().contains(Arrangement.SAILDRIVE)));
    }
}

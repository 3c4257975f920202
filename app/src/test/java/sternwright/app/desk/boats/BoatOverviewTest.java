package sternwright.app.desk.boats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.HashSet;
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

class BoatOverviewTest {
    @Test
    void everyPartWithSomethingToSayIsOnThePictureAndInTheTable() throws IOException {
        Set<Arrangement> seen = EnumSet.noneOf(Arrangement.class);
        for (Boat boat : InventedDesk.yard().boats().values()) {
            BoatOverview overview = BoatOverview.of(InventedDesk.yard(), boat, InventedDesk.dues(), InventedDesk.TODAY);
            assertEquals(boat.installations().size(), overview.installations().size());
            for (BoatOverview.InstallationView view : overview.installations()) {
                if (seen.add(view.installation().arrangement())) {
                    write(view);
                }
                check(boat, view);
            }
        }
        assertEquals(EnumSet.allOf(Arrangement.class), seen, "the invented yard has every arrangement");
    }

    private static void check(Boat boat, BoatOverview.InstallationView view) {
        Set<String> asking = InventedDesk.dues().stream()
                .filter(d -> d.boatId().equals(boat.id())
                        && d.part().installationId().equals(view.installation().id()))
                .filter(d -> d.state() != DueState.COMING && d.state() != DueState.EVERY_VISIT)
                .map((Due d) -> d.part().partId())
                .collect(Collectors.toSet());
        Set<String> keys = new HashSet<>();
        for (PartRow row : view.parts()) {
            assertEquals(asking.contains(row.part().id()), !row.key().isEmpty(), row.toString());
            if (!row.key().isEmpty()) {
                assertTrue(keys.add(row.key()), "a letter twice");
                boolean drawn = view.picture().missing().stream()
                        .noneMatch(m -> m.partId().equals(row.part().id()));
                String link = "href=\"#" + row.anchor() + "\"";
                assertEquals(drawn, view.picture().wide().contains(link), link);
                assertEquals(drawn, view.picture().narrow().contains(link), link);
            }
        }
        assertEquals(asking.size(), keys.size());
        assertFalse(view.picture().wide().contains("style="));
    }

    @ParameterizedTest
    @CsvSource({"0, A", "25, Z", "26, AA", "27, AB", "51, AZ", "52, BA"})
    void letters(int number, String letter) {
        assertEquals(letter, BoatOverview.letter(number));
    }

    private static void write(BoatOverview.InstallationView view) throws IOException {
        Path to = Files.createDirectories(Path.of("target/paper"));
        String name = view.installation().arrangement().toString();
        Files.writeString(
                to.resolve("boat-" + name + "-wide.svg"), view.picture().wide());
        Files.writeString(
                to.resolve("boat-" + name + "-narrow.svg"), view.picture().narrow());
    }
}

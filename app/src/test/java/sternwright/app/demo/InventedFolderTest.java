package sternwright.app.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sternwright.app.desk.due.DueWork;
import sternwright.app.files.YardFiles;
import sternwright.app.files.YardFolder;
import sternwright.app.files.problem.BadInput;
import sternwright.boat.Arrangement;
import sternwright.boat.Boat;
import sternwright.boat.Cooling;
import sternwright.boat.Installation;
import sternwright.boat.Winter;
import sternwright.due.Due;
import sternwright.due.DueState;
import sternwright.history.MeterReading;
import sternwright.history.Outcome;
import sternwright.history.ServiceEntry;

class InventedFolderTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 9, 14);
    private static final InventedYard NORTH = new InventedFolder(InventedFolder.Where.NORTH).make(60, TODAY, 1);

    @TempDir
    Path temp;

    private static Stream<Installation> installations() {
        return NORTH.boats().stream().flatMap(b -> b.installations().stream());
    }

    private static Stream<ServiceEntry> entries() {
        return NORTH.histories().values().stream().flatMap(h -> h.entries().stream());
    }

    @Test
    void everyArrangementCoolingAndBerthIsThere() {
        assertEquals(60, NORTH.boats().stream().map(Boat::id).distinct().count());
        assertEquals(
                EnumSet.allOf(Arrangement.class),
                installations().map(Installation::arrangement).collect(Collectors.toSet()));
        assertEquals(
                EnumSet.allOf(Cooling.class),
                installations().map(Installation::cooling).collect(Collectors.toSet()));
        assertEquals(6, NORTH.boats().stream().map(Boat::berthId).distinct().count());
        for (Arrangement a : Arrangement.values()) {
            Set<Integer> engines = NORTH.boats().stream()
                    .filter(b -> b.installations().get(0).arrangement() == a)
                    .map(b -> b.installations().size())
                    .collect(Collectors.toSet());
            assertEquals(Set.of(1, 2), engines, a + " single and twin");
        }
    }

    @Test
    void thePastHoldsWhatPeopleDo() {
        LocalDate first =
                entries().map(ServiceEntry::date).min(LocalDate::compareTo).orElseThrow();
        assertTrue(first.isBefore(TODAY.minusYears(7)), "eight years of history");
        assertTrue(entries().allMatch(e -> e.date().isBefore(TODAY)));
        assertTrue(entries().anyMatch(e -> e.outcome() == Outcome.REFUSED), "refusals");
        assertTrue(entries().anyMatch(e -> e.ruleId().equals("grounding")), "groundings");
        assertTrue(entries().anyMatch(e -> e.ruleId().equals("contaminated")), "contaminated mounts");
        assertTrue(
                entries()
                        .flatMap(e -> e.readings().stream())
                        .anyMatch(r -> r.name().equals("anode-remaining") && r.value() < 50),
                "anodes found half gone");
        assertTrue(
                NORTH.histories().values().stream()
                        .flatMap(h -> h.meter().stream())
                        .anyMatch(m -> m.newMeterHours() != null),
                "replaced meters");
        assertTrue(NORTH.boats().stream().anyMatch(b -> runsBack(b.id())), "wrong readings");
    }

    private static boolean runsBack(String boatId) {
        Map<String, List<MeterReading>> byEngine =
                java.util.Objects.requireNonNull(NORTH.histories().get(boatId)).meter().stream()
                        .collect(Collectors.groupingBy(MeterReading::installationId));
        return byEngine.values().stream()
                .anyMatch(list -> java.util.stream.IntStream.range(1, list.size())
                        .anyMatch(i -> list.get(i).hours() < list.get(i - 1).hours()
                                && list.get(i - 1).newMeterHours() == null));
    }

    @Test
    void beforeTheFrostNearlyEveryBoatIsProtected() {
        InventedYard late = new InventedFolder(InventedFolder.Where.NORTH).make(60, LocalDate.of(2026, 11, 25), 1);
        List<Boat> ashore =
                late.boats().stream().filter(b -> b.winter() == Winter.ASHORE).toList();
        long done = ashore.stream()
                .filter(b -> java.util.Objects.requireNonNull(late.histories().get(b.id())).entries().stream()
                        .anyMatch(e -> e.ruleId().equals("freeze-protect-raw-water")
                                && e.date().isAfter(LocalDate.of(2026, 8, 31))))
                .count();
        assertTrue(done >= 0.85 * ashore.size(), done + " of " + ashore.size());
        assertTrue(ashore.size() > 36, "about three quarters winter ashore: " + ashore.size());
    }

    @Test
    void theSameSeedAndDayGiveTheSameYard() {
        InventedFolder north = new InventedFolder(InventedFolder.Where.NORTH);
        assertEquals(north.make(12, TODAY, 7), north.make(12, TODAY, 7));
    }

    @Test
    void theFolderIsReadWithoutAProblemAndSaysTheSame() throws IOException {
        Path root = temp.resolve("yard-demo");
        InventedYard written = new InventedFolder(InventedFolder.Where.NORTH).write(root, 30, TODAY, 1);
        YardFiles files = YardFolder.all(root, TODAY);
        assertEquals(Set.copyOf(written.boats()), Set.copyOf(files.boats().values()));
        assertEquals(written.histories(), files.histories());
        assertTrue(
                files.remarks().stream().allMatch(r -> r.file().startsWith("hours/")),
                "only the wrong readings are remarked: " + files.remarks());
        assertFalse(files.remarks().isEmpty(), "and they are");
        assertTrue(files.yard().invented());
        List<Due> dues = new DueWork(files).all(TODAY);
        assertTrue(
                dues.stream()
                        .map(Due::state)
                        .collect(Collectors.toSet())
                        .containsAll(Arrays.asList(
                                DueState.OVERDUE, DueState.DUE, DueState.UNKNOWN, DueState.COMING, DueState.REFUSED)),
                "every state is seen");
    }

    @Test
    void aFolderThatHoldsSomethingIsLeftAlone() throws IOException {
        Files.writeString(temp.resolve("mine.txt"), "mine");
        InventedFolder demo = new InventedFolder(InventedFolder.Where.NORTH);
        BadInput refused = assertThrows(BadInput.class, () -> demo.write(temp, 5, TODAY, 1));
        assertTrue(refused.problems().get(0).text().contains("left as it is"));
        try (Stream<Path> inside = Files.list(temp)) {
            assertEquals(1, inside.count());
        }
    }

    @Test
    void aSouthernYardTurnsTheYearRound() throws IOException {
        LocalDate march = LocalDate.of(2026, 3, 14);
        Path root = temp.resolve("south");
        new InventedFolder(InventedFolder.Where.SOUTH).write(root, 6, march, 2);
        YardFiles files = YardFolder.all(root, march);
        assertTrue(files.berths().values().stream().allMatch(b -> b.southern()));
        Set<Integer> layUpMonths = files.histories().values().stream()
                .flatMap(h -> h.entries().stream())
                .filter(e -> e.ruleId().equals("change-engine-oil"))
                .map(e -> e.date().getMonthValue())
                .collect(Collectors.toSet());
        assertTrue(layUpMonths.contains(4) || layUpMonths.contains(5), "oil is changed in the southern autumn");
        assertTrue(new DueWork(files).all(march).stream().anyMatch(d -> d.state() == DueState.DUE));
    }
}

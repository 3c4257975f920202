package sternwright.app.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sternwright.app.demo.InventedFolder;
import sternwright.app.files.YardFiles;
import sternwright.app.files.YardFolder;
import sternwright.app.files.shelf.FolderShelf;
import sternwright.app.files.shelf.Kept;
import sternwright.app.files.shelf.Shelf;
import sternwright.app.files.shelf.ShelfContract;
import sternwright.app.files.shelf.WorkedOut;
import sternwright.app.files.shelf.Writing;
import sternwright.app.store.backup.StoreCopy;

/** What a store does on either database. */
abstract class StoreContract extends ShelfContract {
    private static final Instant THEN = Instant.parse("2026-03-01T10:00:00Z");

    protected Store store;

    /** Where an empty store can be. */
    abstract StoreAddress address() throws Exception;

    @BeforeEach
    void open() throws Exception {
        store = Store.open(address(), Clock.fixed(THEN, ZoneOffset.UTC));
    }

    @AfterEach
    void close() {
        store.close();
    }

    @Override
    protected Shelf shelf(String by) {
        return store.shelf(by);
    }

    @Test
    void everyVersionStaysWithWhoAndWhenAndWhy() throws IOException {
        try (Writing writing = store.shelf("Ann").write("registered")) {
            writing.put("boats/heron.yaml", "one");
            writing.commit();
        }
        try (Writing writing = store.shelf("Ben").write("new engine")) {
            writing.put("boats/heron.yaml", "two");
            writing.commit();
        }
        try (Writing writing = store.shelf("Ben").write("sold")) {
            writing.remove("boats/heron.yaml");
            writing.commit();
        }
        List<TextVersion> versions = store.versions("boats/heron.yaml");
        assertEquals(
                List.of(3, 2, 1), versions.stream().map(TextVersion::version).toList());
        assertEquals(
                List.of("sold", "new engine", "registered"),
                versions.stream().map(TextVersion::why).toList());
        assertEquals(
                List.of("Ben", "Ben", "Ann"),
                versions.stream().map(TextVersion::by).toList());
        assertEquals(Optional.empty(), versions.get(0).text());
        assertEquals(Optional.of("one"), versions.get(2).text());
        assertTrue(versions.stream().allMatch(v -> v.at().equals(THEN)));
    }

    @Test
    void aLineAddedIsKeptAsThatLine() throws IOException {
        Shelf shelf = store.shelf("Ann");
        write(shelf, "history/heron.csv", "date,part\n");
        StringBuilder all = new StringBuilder("date,part\n");
        for (int i = 0; i < 120; i++) {
            all.append("2026-01-01,p").append(i).append('\n');
            write(shelf, "history/heron.csv", all.toString());
        }
        assertEquals(all.toString(), shelf.text("history/heron.csv").orElseThrow());
        List<TextVersion> versions = store.versions("history/heron.csv");
        assertEquals(121, versions.size());
        assertEquals(Optional.of("2026-01-01,p119\n"), versions.get(0).added());
        assertEquals(Optional.of(all.toString()), versions.get(0).text());
        long whole = versions.stream().filter(v -> v.added().isEmpty()).count();
        assertTrue(whole >= 2 && whole <= 4, "written whole now and then: " + whole);
    }

    @Test
    void aStillShelfDoesNotSeeWhatComesLater() throws IOException {
        Shelf shelf = store.shelf("Ann");
        write(shelf, "yard.yaml", "one");
        write(shelf, "boats/heron.yaml", "h");
        Shelf still = shelf.still();
        write(shelf, "yard.yaml", "two");
        write(shelf, "boats/avocet.yaml", "a");
        try (Writing writing = shelf.write("sold")) {
            writing.remove("boats/heron.yaml");
            writing.commit();
        }
        assertEquals("one", still.text("yard.yaml").orElseThrow());
        assertEquals(List.of("boats/heron.yaml"), still.names("boats"));
        assertTrue(still.holds("boats/heron.yaml"));
        assertEquals(List.of("boats/avocet.yaml"), shelf.names("boats"));
    }

    @Test
    void whatIsTheSameIsNotWrittenAgain() throws IOException {
        Shelf shelf = store.shelf("Ann");
        write(shelf, "yard.yaml", "one");
        Kept kept = shelf.kept("yard.yaml").orElseThrow();
        String state = shelf.state();
        write(shelf, "yard.yaml", "one");
        assertEquals(kept, shelf.kept("yard.yaml").orElseThrow());
        assertEquals(state, shelf.state());
    }

    @Test
    void aWholeYardIsReadFromItAsFromAFolder(@TempDir Path root) throws IOException {
        LocalDate today = LocalDate.parse("2026-10-01");
        InventedFolder invented = new InventedFolder(InventedFolder.Where.NORTH);
        invented.write(store.shelf("demo"), 12, today, 5);
        invented.write(new FolderShelf(root), 12, today, 5);
        YardFiles files = YardFolder.all(store.shelf(""), today);
        assertEquals(12, files.boats().size());
        assertEquals(YardFolder.all(root, today), files);
    }

    @Test
    void openedAgainItSaysTheSame() throws Exception {
        write(store.shelf("Ann"), "yard.yaml", "kept");
        try (Store again = Store.open(store.address(), Clock.systemUTC())) {
            assertEquals("kept", again.shelf("").text("yard.yaml").orElseThrow());
        }
    }

    @Test
    void aSealStandsForATextAndAllThatWasWrittenBefore() throws IOException {
        Shelf shelf = store.shelf("Ann");
        write(shelf, "yard.yaml", "one");
        write(shelf, "boats/heron.yaml", "h");
        Map<String, String> first = workedOut(shelf).seals();
        assertEquals(Set.of("yard.yaml", "boats/heron.yaml"), first.keySet());
        assertEquals(first, workedOut(store.shelf("Ben")).seals());
        Shelf still = shelf.still();
        write(shelf, "yard.yaml", "two");
        write(shelf, "boats/avocet.yaml", "a");
        Map<String, String> then = workedOut(shelf).seals();
        assertNotEquals(first.get("yard.yaml"), then.get("yard.yaml"));
        assertEquals(first.get("boats/heron.yaml"), then.get("boats/heron.yaml"));
        Map<String, String> seen = workedOut(still).seals();
        assertEquals(WorkedOut.MOVING, seen.get("yard.yaml"));
        assertEquals(first.get("boats/heron.yaml"), seen.get("boats/heron.yaml"));
        write(shelf, "yard.yaml", "one");
        assertNotEquals(
                first.get("yard.yaml"), workedOut(shelf).seals().get("yard.yaml"), "a text that came back has a past");
        try (Writing writing = shelf.write("sold")) {
            writing.remove("boats/heron.yaml");
            writing.commit();
        }
        assertEquals(
                Set.of("yard.yaml", "boats/avocet.yaml"),
                workedOut(shelf).seals().keySet());
    }

    @Test
    void whatWasWorkedOutIsKeptByKindAndNameAndIsInNoBackup(@TempDir Path folder) throws IOException {
        write(store.shelf("Ann"), "yard.yaml", "one");
        WorkedOut kept = workedOut(store.shelf(""));
        kept.keep("a", Map.of("x", row("1", 1, 2), "y", row("1", 3)));
        kept.keep("b", Map.of("x", row("2", 4)));
        kept.keep("a", Map.of("y", row("3", 5)));
        kept.keep("a", Map.of());
        assertEquals(Map.of("x", "1 [1, 2]", "y", "3 [5]"), rows(kept, "a"));
        assertEquals(Map.of("x", "2 [4]"), rows(kept, "b"));
        assertEquals(Map.of(), rows(kept, "c"));
        assertEquals(List.of(), Verification.of(store).faults());
        Path file = folder.resolve("copy.db");
        StoreCopy.write(store, file);
        try (Store copy = Store.open(StoreAddress.file(file), Clock.systemUTC())) {
            assertEquals("one", copy.shelf("").text("yard.yaml").orElseThrow());
            assertEquals(Map.of(), rows(workedOut(copy.shelf("")), "a"));
        }
    }

    private static WorkedOut workedOut(Shelf shelf) throws IOException {
        return shelf.workedOut().orElseThrow();
    }

    private static WorkedOut.Row row(String from, int... bytes) {
        byte[] content = new byte[bytes.length];
        for (int i = 0; i < bytes.length; i++) {
            content[i] = (byte) bytes[i];
        }
        return new WorkedOut.Row(from, content);
    }

    private static Map<String, String> rows(WorkedOut kept, String kind) throws IOException {
        Map<String, String> rows = new TreeMap<>();
        kept.read(kind, (name, from, content) -> rows.put(name, from + " " + Arrays.toString(content)));
        return rows;
    }
}

package sternwright.app.desk.open;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import sternwright.app.demo.InventedFolder;
import sternwright.app.desk.due.DueWork;
import sternwright.app.desk.recording.RecordWork;
import sternwright.app.files.FolderLayout;
import sternwright.app.files.YardFiles;
import sternwright.app.files.YardFolder;
import sternwright.app.files.YardSnapshot;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.problem.Problem;
import sternwright.app.files.sheet.Sheet;
import sternwright.app.files.shelf.FolderShelf;
import sternwright.app.files.shelf.Kept;
import sternwright.app.files.shelf.Shelf;
import sternwright.app.files.shelf.WhatIfShelf;
import sternwright.app.files.shelf.Writing;
import sternwright.app.store.Store;
import sternwright.app.store.StoreAddress;
import sternwright.boat.Boat;
import sternwright.boat.PartRef;
import sternwright.history.Outcome;
import sternwright.history.ServiceEntry;

/** What stays open says what reading everything anew would say, and reads again only what has changed. */
class OpenYardTest {
    private static final LocalDate TODAY = LocalDate.parse("2026-10-01");
    private static final Clock NOON =
            Clock.fixed(TODAY.atTime(LocalTime.NOON).toInstant(ZoneOffset.UTC), ZoneOffset.UTC);

    @TempDir
    Path folder;

    private Store store;

    @BeforeEach
    void aYardOfTen() throws IOException {
        store = Store.open(StoreAddress.file(folder.resolve("yard.db")), NOON);
        new InventedFolder(InventedFolder.Where.NORTH).write(store.shelf("demo"), 10, TODAY, 7);
    }

    @Test
    void onlyTheBoatThatChangedIsReadAgain() throws IOException {
        Shelf shelf = store.shelf("Ann");
        YardSnapshot before = YardSnapshot.of(shelf, TODAY);
        List<String> ids = List.copyOf(before.files().boats().keySet());
        assertEquals(Set.copyOf(ids), before.changed());
        assertSame(before, before.next(shelf, TODAY));
        String name = FolderLayout.history(ids.get(3));
        append(
                shelf,
                name,
                shelf.text(name).orElseThrow().lines().skip(1).findFirst().orElseThrow());
        YardSnapshot after = before.next(shelf, TODAY);
        assertEquals(Set.of(ids.get(3)), after.changed());
        assertSame(before.files().boats().get(ids.get(2)), after.files().boats().get(ids.get(2)));
        assertEquals(YardFolder.all(shelf, TODAY), after.files());
    }

    @Test
    void whoeverReadsAheadIsWokenByADeedAndReadsWhatItChanged() throws Exception {
        AtomicInteger held = new AtomicInteger();
        OpenYard yard = new OpenYard(by -> new Counted(store.shelf(by), held), NOON);
        yard.readAhead();
        int reads = held.get();
        Thread ahead = new Thread(() -> {
            try {
                yard.awaitChange(TimeUnit.HOURS.toMillis(1));
                yard.readAhead();
            } catch (InterruptedException e) {
                throw new IllegalStateException(e);
            }
        });
        ahead.start();
        String name = "programmes/own.yaml";
        put(store.shelf("Ann"), name, store.shelf("").text(name).orElseThrow().replace("hours: 250", "hours: 130"));
        yard.changed();
        ahead.join(TimeUnit.MINUTES.toMillis(1));
        assertTrue(held.get() > reads, "what was changed is read before anybody asks");
        reads = held.get();
        assertEquals(new DueWork(YardFolder.all(store.shelf(""), TODAY)).all(TODAY), yard.dues());
        assertEquals(reads, held.get(), "whoever asks then reads nothing");
    }

    @Test
    void whatHoldsForAllBoatsHasThemAllCheckedAgain() throws IOException {
        Shelf shelf = store.shelf("Ann");
        YardSnapshot before = YardSnapshot.of(shelf, TODAY);
        String berths = shelf.text(FolderLayout.BERTHS).orElseThrow();
        String id = before.files().berths().keySet().iterator().next();
        put(shelf, FolderLayout.BERTHS, berths.replaceFirst("id: " + id, "id: elsewhere"));
        BadInput wrong = assertThrows(BadInput.class, () -> before.next(shelf, TODAY));
        assertEquals(
                assertThrows(BadInput.class, () -> YardFolder.all(shelf, TODAY)).problems(), wrong.problems());
        put(shelf, FolderLayout.BERTHS, berths);
        assertEquals(before.files(), before.next(shelf, TODAY).files());
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void duesAreThoseOfReadingEverythingAnew(long seed) throws IOException {
        Random random = new Random(seed);
        OpenYard yard = new OpenYard(store, NOON);
        OpenYard otherNode = new OpenYard(store, NOON);
        String state = yard.state();
        for (int i = 0; i < 6; i++) {
            YardFiles files = yard.files();
            List<Boat> boats = List.copyOf(files.boats().values());
            Boat boat = boats.get(random.nextInt(boats.size()));
            record(yard.shelf("Ann"), files, boat, random);
            assertEquals(new DueWork(YardFolder.all(store.shelf(""), TODAY)).all(TODAY), yard.dues());
            assertEquals(yard.dues(), otherNode.dues());
            assertEquals(
                    yard.dues().stream()
                            .filter(d -> d.boatId().equals(boat.id()))
                            .toList(),
                    yard.dues(boat.id()));
        }
        assertNotEquals(state, yard.state());
    }

    /** A figure of the yard changes what is due, and no boat has to be read again for it. */
    @ParameterizedTest
    @CsvSource({
        "yard.yaml, annual-hours: 1, annual-hours: 2",
        "berths.yaml, salinity-psu: 3, salinity-psu: 1",
        "programmes/own.yaml, hours: 250, hours: 130"
    })
    void aFigureThatHoldsForAllBoatsReadsNoneAgain(String name, String from, String to) throws IOException {
        OpenYard yard = new OpenYard(store, NOON);
        var before = yard.dues();
        YardSnapshot read = YardSnapshot.of(store.shelf(""), TODAY);
        String changed = store.shelf("").text(name).orElseThrow().replace(from, to);
        YardFiles then = YardFolder.all(new WhatIfShelf(store.shelf(""), Map.of(name, changed)), TODAY);
        assertTrue(new DueWork(then).all(TODAY).equals(yard.duesIf(then)), "what would be due");
        assertTrue(before.equals(yard.dues()), "nothing has changed yet");
        put(store.shelf("Ann"), name, changed);
        YardFiles anew = YardFolder.all(store.shelf(""), TODAY);
        assertTrue(anew.equals(yard.files()), "the yard");
        assertTrue(new DueWork(anew).all(TODAY).equals(yard.dues()), "the due list");
        assertFalse(before.equals(yard.dues()), "nothing has changed");
        assertEquals(Set.of(), read.next(store.shelf(""), TODAY).changed());
    }

    @Test
    void whatIsWrongIsFoundOnceForAState() throws IOException {
        Shelf shelf = store.shelf("Ann");
        String name = shelf.names("boats").get(4);
        String right = shelf.text(name).orElseThrow();
        put(shelf, name, right + "colour: red\n");
        AtomicInteger held = new AtomicInteger();
        OpenYard yard = new OpenYard(by -> new Counted(store.shelf(by), held), NOON);
        List<Problem> first = assertThrows(BadInput.class, yard::files).problems();
        int reads = held.get();
        for (int i = 0; i < 5; i++) {
            assertEquals(first, assertThrows(BadInput.class, yard::dues).problems());
            assertEquals(first, assertThrows(BadInput.class, yard::state).problems());
        }
        assertEquals(reads, held.get(), "nothing is read again as long as nothing changes");
        put(shelf, name, right);
        assertEquals(YardFolder.all(shelf, TODAY), yard.files());
        put(shelf, name, right + "colour: red\n");
        assertEquals(first, assertThrows(BadInput.class, yard::files).problems(), "also after it was right");
        put(shelf, name, right);
        assertEquals(10, yard.files().boats().size());
    }

    /** Counts how often somebody begins to read. */
    private record Counted(Shelf shelf, AtomicInteger held) implements Shelf {
        @Override
        public String place() {
            return shelf.place();
        }

        @Override
        public List<String> names(String folder) throws IOException {
            return shelf.names(folder);
        }

        @Override
        public Optional<Kept> kept(String name) throws IOException {
            return shelf.kept(name);
        }

        @Override
        public boolean holds(String name) throws IOException {
            return shelf.holds(name);
        }

        @Override
        public Shelf still() throws IOException {
            held.incrementAndGet();
            return shelf.still();
        }

        @Override
        public String state() throws IOException {
            return shelf.state();
        }

        @Override
        public Map<String, String> marks() throws IOException {
            return shelf.marks();
        }

        @Override
        public Writing write(String why) throws IOException {
            return shelf.write(why);
        }
    }

    @Test
    void aPackedYardSaysTheSame() {
        YardFiles files = YardFolder.all(store.shelf(""), TODAY);
        YardFiles packed = files.packed();
        assertEquals(files, packed);
        assertSame(packed, packed.packed());
        files.histories().forEach((id, history) -> assertEquals(history, packed.history(id)));
    }

    @Test
    void aFolderIsLookedAtAgainAfterADeed(@TempDir Path root) throws IOException {
        new InventedFolder(InventedFolder.Where.SOUTH).write(root, 4, TODAY, 2);
        OpenYard yard = new OpenYard(root, NOON);
        YardFiles before = yard.files();
        Boat boat = before.boats().values().iterator().next();
        record(yard.shelf("Ann"), before, boat, new Random(1));
        yard.changed();
        assertEquals(YardFolder.all(new FolderShelf(root), TODAY), yard.files());
        assertNotEquals(before, yard.files());
    }

    private static void record(Shelf shelf, YardFiles files, Boat boat, Random random) throws IOException {
        DueWork work = new DueWork(files);
        List<PartRef> parts = new ArrayList<>();
        boat.installations().forEach(i -> i.parts().forEach(p -> parts.add(new PartRef(i.id(), p.id()))));
        parts.removeIf(p -> work.rulesOn(boat, p).isEmpty());
        PartRef part = parts.get(random.nextInt(parts.size()));
        List<String> rules = work.rulesOn(boat, part);
        ServiceEntry entry = new ServiceEntry(
                TODAY, part, rules.get(random.nextInt(rules.size())), Outcome.DONE, null, "AB", List.of(), "");
        RecordWork.record(
                shelf,
                boat.id(),
                new RecordWork.Said("test", List.of(new Sheet.Row<>(0, entry)), List.of()),
                TODAY,
                TODAY,
                false);
    }

    private static void append(Shelf shelf, String name, String line) throws IOException {
        put(shelf, name, shelf.text(name).orElseThrow() + line + "\n");
    }

    private static void put(Shelf shelf, String name, String text) throws IOException {
        try (Writing writing = shelf.write("test")) {
            writing.put(name, text);
            writing.commit();
        }
    }
}

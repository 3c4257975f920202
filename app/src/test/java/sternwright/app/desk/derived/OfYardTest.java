package sternwright.app.desk.derived;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sternwright.app.demo.InventedFolder;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.files.FolderLayout;
import sternwright.app.files.shelf.Shelf;
import sternwright.app.files.shelf.Writing;
import sternwright.app.store.Store;
import sternwright.app.store.StoreAddress;
import sternwright.boat.Boat;

/** What is worked out from a yard is worked out once, until the yard is another one. */
class OfYardTest {
    private static final LocalDate TODAY = LocalDate.parse("2026-10-01");
    private static final Clock NOON =
            Clock.fixed(TODAY.atTime(LocalTime.NOON).toInstant(ZoneOffset.UTC), ZoneOffset.UTC);

    @TempDir
    Path folder;

    @Test
    void itIsWorkedOutOnceHoweverManyAskAndAgainAfterAChange() throws IOException {
        try (Store store = Store.open(StoreAddress.file(folder.resolve("yard.db")), NOON)) {
            new InventedFolder(InventedFolder.Where.NORTH).write(store.shelf("demo"), 3, TODAY, 7);
            OpenYard yard = new OpenYard(store::shelf, NOON);
            AtomicInteger worked = new AtomicInteger();
            OfYard<List<String>> names = new OfYard<>(yard, y -> {
                worked.incrementAndGet();
                return y.files().boats().values().stream().map(b -> b.name()).toList();
            });
            List<List<String>> asked =
                    IntStream.range(0, 24).parallel().mapToObj(i -> names.get()).toList();
            assertEquals(1, worked.get());
            List<String> first = names.get();
            asked.forEach(a -> assertSame(first, a));
            rename(
                    store.shelf("Ann"),
                    List.copyOf(yard.files().boats().keySet()).get(0),
                    "Anders benannt");
            yard.changed();
            assertNotSame(first, names.get());
            assertEquals(2, worked.get());
            assertEquals("Anders benannt", names.get().get(0));
        }
    }

    @Test
    void theLastAnswersAreKeptUntilTheYardIsAnother() throws IOException {
        try (Store store = Store.open(StoreAddress.file(folder.resolve("yard.db")), NOON)) {
            new InventedFolder(InventedFolder.Where.NORTH).write(store.shelf("demo"), 3, TODAY, 7);
            OpenYard yard = new OpenYard(store::shelf, NOON);
            EachOfYard<String, String> names = new EachOfYard<>(yard, 2);
            AtomicInteger worked = new AtomicInteger();
            List<String> ids = List.copyOf(yard.files().boats().keySet());
            for (String id : List.of(ids.get(0), ids.get(1), ids.get(0), ids.get(1), ids.get(2), ids.get(1))) {
                Boat boat = Objects.requireNonNull(yard.files().boats().get(id));
                assertEquals(boat.name(), name(names, yard, id, worked));
            }
            assertEquals(3, worked.get(), "each once");
            name(names, yard, ids.get(0), worked);
            assertEquals(4, worked.get(), "the one that was asked for longest ago went");
            rename(store.shelf("Ann"), ids.get(1), "Anders benannt");
            yard.changed();
            assertEquals("Anders benannt", name(names, yard, ids.get(1), worked));
        }
    }

    private static String name(EachOfYard<String, String> names, OpenYard yard, String id, AtomicInteger worked)
            throws IOException {
        return names.<IOException>of(id, () -> {
            worked.incrementAndGet();
            return Objects.requireNonNull(yard.files().boats().get(id)).name();
        });
    }

    private static void rename(Shelf shelf, String boatId, String name) throws IOException {
        String file = FolderLayout.boat(boatId);
        String text = shelf.text(file).orElseThrow();
        try (Writing writing = shelf.write("another name")) {
            writing.put(file, text.replaceFirst("(?m)^name: .*$", "name: " + name));
            writing.commit();
        }
    }
}

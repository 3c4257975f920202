package sternwright.app.desk.keeping;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.Statement;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.jdbc.core.simple.JdbcClient;
import sternwright.app.demo.InventedFolder;
import sternwright.app.files.YardFiles;
import sternwright.app.files.YardFolder;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.shelf.Shelf;
import sternwright.app.files.shelf.Writing;
import sternwright.app.store.RunningPostgres;
import sternwright.app.store.Store;
import sternwright.app.store.StoreAddress;
import sternwright.app.store.Verification;
import sternwright.app.store.backup.StoreCopy;

/** Backed up while people write, restored, verified; damage is found. */
class BackupTest {
    private static final LocalDate TODAY = LocalDate.parse("2026-10-01");
    private static final Clock CLOCK = Clock.systemUTC();

    @TempDir
    Path root;

    @Test
    void backedUpWhileOthersWriteItIsWholeAndHasAllThatWasDoneBefore() throws Exception {
        Path folder = root.resolve("yard");
        try (YardPlace place = place(folder)) {
            Store store = place.store().orElseThrow();
            Shelf shelf = store.shelf("Ann");
            AtomicBoolean done = new AtomicBoolean();
            AtomicInteger count = new AtomicInteger();
            ExecutorService other = Executors.newSingleThreadExecutor();
            Future<?> writing = other.submit(() -> {
                while (!done.get()) {
                    write(shelf, "count.md", Integer.toString(count.incrementAndGet()));
                }
                return null;
            });
            while (count.get() < 3) {
                Thread.onSpinWait();
            }
            int before = count.get() - 1;
            Path file = root.resolve("one.backup");
            Verification found = new Backup(CLOCK).write(place, file, TODAY);
            done.set(true);
            writing.get();
            other.shutdown();
            assertTrue(found.changes() >= before);
            Path elsewhere = root.resolve("elsewhere");
            new Backup(CLOCK).restore(file, elsewhere, null, TODAY);
            try (YardPlace restored = YardPlace.of(elsewhere, Map.of(), CLOCK)) {
                int then = Integer.parseInt(restored.shelf("").text("count.md").orElseThrow());
                assertTrue(then >= before && then <= count.get(), before + " <= " + then);
                assertEquals(YardFolder.all(shelf, TODAY), YardFolder.all(restored.shelf(""), TODAY));
                assertEquals(
                        then,
                        restored.store().orElseThrow().versions("count.md").size());
            }
        }
    }

    @Test
    void postgresGoesIntoAFileAndBackIntoPostgres() throws Exception {
        StoreAddress first = RunningPostgres.fresh();
        StoreAddress second = RunningPostgres.fresh();
        Path file = root.resolve("pg.backup");
        YardFiles files;
        try (YardPlace place = named(root.resolve("a"), first)) {
            Store store = place.store().orElseThrow();
            new InventedFolder(InventedFolder.Where.NORTH).write(store.shelf("demo"), 4, TODAY, 3);
            store.attachments().put("heron", "", "plate.jpg", "image/jpeg", new byte[] {1, 2, 3, -1}, "Ann");
            accounts(store);
            files = YardFolder.all(store.shelf(""), TODAY);
            new Backup(CLOCK).write(place, file, TODAY);
        }
        new Backup(CLOCK).restore(file, root.resolve("b"), second, TODAY);
        new Backup(CLOCK).restore(file, root.resolve("c"), null, TODAY);
        for (YardPlace place :
                List.of(named(root.resolve("b"), second), YardPlace.of(root.resolve("c"), Map.of(), CLOCK))) {
            try (place) {
                Store store = place.store().orElseThrow();
                assertEquals(files, YardFolder.all(store.shelf(""), TODAY));
                assertEquals(List.of(), Verification.of(store).faults());
                assertEquals(1, store.attachments().of("heron").size());
                assertEquals(
                        "Ann true",
                        JdbcClient.create(
                                        place.folder().endsWith("c")
                                                ? StoreCopy.sqlite(YardPlace.accountsFile(place.folder()))
                                                : store.reader())
                                .sql("select full_name, locked from account")
                                .query((row, n) -> row.getString(1) + " " + row.getBoolean(2))
                                .single());
                write(store.shelf("Ben"), "after.md", "goes on");
                assertEquals(List.of(), Verification.of(store).faults());
            }
        }
        BadInput filled =
                assertThrows(BadInput.class, () -> new Backup(CLOCK).restore(file, root.resolve("b"), second, TODAY));
        assertTrue(String.valueOf(filled.getMessage()).contains("already"), filled.getMessage());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "update shelf_change set text = 'forged' where seq = 3",
                "update shelf_change set by_whom = 'nobody' where seq = 3",
                "update shelf_change set at = at - 1000 where seq = 2",
                "delete from shelf_change where seq = 4",
                "delete from shelf_change where seq = (select max(seq) from shelf_change)",
                "update shelf_text set gone = true where name = 'yard.yaml'",
                "update attachment set content = 'x'",
                "update shelf_head set seq = seq + 1"
            })
    void whateverIsAlteredLaterIsFound(String alteration) throws Exception {
        try (YardPlace place = place(root.resolve("yard"))) {
            Store store = place.store().orElseThrow();
            store.attachments().put("", "", "plate.jpg", "image/jpeg", new byte[] {1, 2, 3}, "Ann");
            assertEquals(List.of(), Verification.of(store).faults());
            try (Connection c = store.writer().getConnection();
                    Statement s = c.createStatement()) {
                assertTrue(s.executeUpdate(alteration) > 0);
            }
            assertFalse(Verification.of(store).faults().isEmpty());
            assertThrows(BadInput.class, () -> Backup.verify(store, TODAY));
            Path file = root.resolve("bad.backup");
            assertThrows(BadInput.class, () -> new Backup(CLOCK).write(place, file, TODAY));
            assertFalse(Files.exists(file), "a backup that is not whole is not kept");
        }
    }

    @Test
    void aDamagedFileIsRefusedAndNothingIsTouched() throws Exception {
        Path folder = root.resolve("yard");
        Path file = root.resolve("one.backup");
        try (YardPlace place = place(folder)) {
            new Backup(CLOCK).write(place, file, TODAY);
        }
        byte[] whole = Files.readAllBytes(file);
        String before = state(folder);
        for (double share : new double[] {0, 0.1, 0.5, 0.9, 0.999}) {
            Files.write(file, java.util.Arrays.copyOf(whole, (int) (whole.length * share)));
            assertThrows(BadInput.class, () -> new Backup(CLOCK).restore(file, folder, null, TODAY), "cut at " + share);
        }
        byte[] turned = whole.clone();
        turned[whole.length / 2] ^= 0x55;
        Files.write(file, turned);
        assertThrows(BadInput.class, () -> new Backup(CLOCK).restore(file, folder, null, TODAY));
        assertEquals(before, state(folder));
        try (Stream<Path> left = Files.list(folder.resolve(".desk"))) {
            assertTrue(left.noneMatch(f -> f.getFileName().toString().startsWith(".restore")));
        }
    }

    @Test
    void whatWasThereIsMovedAside() throws Exception {
        Path folder = root.resolve("yard");
        Path file = root.resolve("one.backup");
        try (YardPlace place = place(folder)) {
            new Backup(CLOCK).write(place, file, TODAY);
            write(place.shelf("Ann"), "later.md", "after the backup");
        }
        new Backup(CLOCK).restore(file, folder, null, TODAY);
        try (YardPlace place = YardPlace.of(folder, Map.of(), CLOCK);
                Stream<Path> kept = Files.walk(folder.resolve(".desk"))) {
            assertFalse(place.shelf("").holds("later.md"));
            assertEquals(
                    2,
                    kept.filter(f -> f.getFileName().toString().equals("yard.db"))
                            .count());
        }
    }

    private static void accounts(Store store) {
        Flyway.configure()
                .dataSource(store.writer())
                .locations("classpath:db/account")
                .table("account_schema_history")
                .baselineOnMigrate(true)
                .baselineVersion("0")
                .load()
                .migrate();
        JdbcClient.create(store.writer())
                .sql("insert into account (id, name, full_name, role, locked, created_at, version)"
                        + " values ('1', 'ann', 'Ann', 'MANAGER', true, 1, 0)")
                .update();
    }

    private YardPlace place(Path folder) throws IOException {
        YardPlace place = YardPlace.withStore(folder, Map.of(), CLOCK);
        new InventedFolder(InventedFolder.Where.NORTH).write(place.shelf("demo"), 4, TODAY, 3);
        return place;
    }

    private static YardPlace named(Path folder, StoreAddress address) throws IOException {
        return YardPlace.of(
                folder,
                Map.of(
                        "STERNWRIGHT_DATABASE_URL", address.url(),
                        "STERNWRIGHT_DATABASE_USER", address.user(),
                        "STERNWRIGHT_DATABASE_PASSWORD", address.password()),
                CLOCK);
    }

    private static String state(Path folder) throws IOException {
        try (YardPlace place = YardPlace.of(folder, Map.of(), CLOCK)) {
            return place.shelf("").state() + place.shelf("").marks();
        }
    }

    private static void write(Shelf shelf, String name, String text) throws IOException {
        try (Writing writing = shelf.write("test")) {
            writing.put(name, text);
            writing.commit();
        }
    }
}

package sternwright.app.desk.keeping;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sternwright.app.demo.InventedFolder;
import sternwright.app.files.problem.BadInput;
import sternwright.app.store.RunningPostgres;
import sternwright.app.store.Store;
import sternwright.app.store.StoreAddress;

/** A folder taken into a store and written out again is the same, byte for byte: comments, order, line ends, documents. */
class MoveYardPropertyTest {
    private static final LocalDate TODAY = LocalDate.parse("2026-10-01");

    @TempDir
    Path root;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void outIsWhatWentIn(long seed) throws Exception {
        Path folder = roughYard(seed);
        StoreAddress address = seed % 3 == 0 ? RunningPostgres.fresh() : StoreAddress.file(root.resolve("yard.db"));
        try (Store store = Store.open(address, Clock.systemUTC())) {
            MoveYard moved = MoveYard.in(folder, store, false, "test", TODAY);
            assertEquals(List.of("left-over.bin"), moved.leftOut());
            assertEquals(2, moved.documents());
        }
        Path out = root.resolve("out");
        Path home = Files.createDirectories(root.resolve("home/.desk"));
        Files.writeString(
                home.resolve("database.properties"),
                "url=" + address.url() + "\nuser=" + address.user() + "\npassword=" + address.password() + "\n");
        try (YardPlace place = YardPlace.of(root.resolve("home"), Map.of(), Clock.systemUTC())) {
            MoveYard.out(place, out);
        }
        Files.delete(folder.resolve("left-over.bin"));
        Map<String, byte[]> before = files(folder);
        Map<String, byte[]> after = files(out);
        assertEquals(before.keySet(), after.keySet());
        before.forEach((name, bytes) -> assertArrayEquals(bytes, after.get(name), name));
    }

    @Test
    void aYardThatIsThereIsOnlyReplacedIfAskedFor() throws IOException {
        Path folder = roughYard(9);
        try (Store store = Store.open(StoreAddress.file(root.resolve("yard.db")), Clock.systemUTC())) {
            MoveYard.in(folder, store, false, "Ann", TODAY);
            String state = store.shelf("").state();
            assertThrows(BadInput.class, () -> MoveYard.in(folder, store, false, "Ann", TODAY));
            Path boat = oneBoat(folder);
            String gone = "boats/" + boat.getFileName();
            String id = String.valueOf(boat.getFileName()).replace(".yaml", "");
            Files.delete(boat);
            Files.deleteIfExists(folder.resolve("history/" + id + ".csv"));
            Files.deleteIfExists(folder.resolve("hours/" + id + ".csv"));
            Files.write(
                    folder.resolve("dates.csv"),
                    Files.readAllLines(folder.resolve("dates.csv")).stream()
                            .filter(l -> !l.startsWith(id + ","))
                            .toList());
            MoveYard.in(folder, store, true, "Ann", TODAY);
            assertEquals(false, store.shelf("").holds(gone));
            assertEquals(2, store.versions(gone).size(), "what it said is still there");
            assertEquals(true, !state.equals(store.shelf("").state()));
        }
    }

    @Test
    void aFolderThatIsWrongIsNotTakenIn() throws IOException {
        Path folder = roughYard(4);
        Files.writeString(folder.resolve("yard.yaml"), "name: [\n");
        try (Store store = Store.open(StoreAddress.file(root.resolve("yard.db")), Clock.systemUTC())) {
            assertThrows(BadInput.class, () -> MoveYard.in(folder, store, false, "Ann", TODAY));
            assertEquals(Map.of(), store.shelf("").marks());
        }
    }

    /** An invented yard whose files look as hands and spreadsheets leave them. */
    private Path roughYard(long seed) throws IOException {
        Random random = new Random(seed);
        Path folder = root.resolve("yard");
        InventedFolder.Where where = random.nextBoolean() ? InventedFolder.Where.NORTH : InventedFolder.Where.SOUTH;
        new InventedFolder(where).write(folder, 3 + random.nextInt(6), TODAY, seed);
        for (Path file : all(folder)) {
            String text = Files.readString(file);
            if (random.nextInt(3) == 0) {
                text = text.replace("\n", "\r\n");
            }
            if (file.toString().endsWith(".yaml") && random.nextInt(2) == 0) {
                text = "# as typed: \u00e9\u00fc\u2014 'quoted'\n" + text + "\n\n# last word";
            }
            if (file.toString().endsWith(".csv") && random.nextInt(4) == 0) {
                text = "\uFEFF" + text.stripTrailing();
            }
            Files.write(file, text.getBytes(StandardCharsets.UTF_8));
        }
        byte[] photo = new byte[1 + random.nextInt(5000)];
        random.nextBytes(photo);
        Files.createDirectories(folder.resolve("documents/heron"));
        Files.write(folder.resolve("documents/heron/plate 1.jpg"), photo);
        Files.write(folder.resolve("documents/tariff.pdf"), new byte[] {(byte) 0xff, 0, 1});
        Files.write(folder.resolve("left-over.bin"), new byte[] {0, (byte) 0xfe});
        return folder;
    }

    private static Path oneBoat(Path folder) throws IOException {
        return all(folder).stream()
                .filter(f -> f.toString().contains("boats"))
                .findFirst()
                .orElseThrow();
    }

    private static List<Path> all(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return new ArrayList<>(files.filter(Files::isRegularFile)
                    .filter(f -> !String.valueOf(f.getFileName()).startsWith("."))
                    .sorted()
                    .toList());
        }
    }

    private static Map<String, byte[]> files(Path folder) throws IOException {
        Map<String, byte[]> files = new TreeMap<>();
        for (Path file : all(folder)) {
            files.put(folder.relativize(file).toString(), Files.readAllBytes(file));
        }
        return files;
    }
}

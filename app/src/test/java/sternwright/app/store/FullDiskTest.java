package sternwright.app.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sternwright.app.files.shelf.Shelf;
import sternwright.app.files.shelf.Writing;

/** No room left: told clearly, nothing torn, and it works again when there is room. */
class FullDiskTest {
    private static final int PAGES = 400;

    @TempDir
    Path folder;

    @Test
    void theWriteThatDoesNotFitIsRefusedWholeAndLaterOnesWork() throws IOException {
        Path file = folder.resolve("yard.db");
        int[] written = {0};
        StoreAddress small = new StoreAddress("jdbc:sqlite:" + file + "?max_page_count=" + PAGES, "", "");
        try (Store store = Store.open(small, Clock.systemUTC())) {
            Shelf shelf = store.shelf("Ann");
            for (int tries = 0; tries < 3; tries++) {
                IOException full = assertThrows(IOException.class, () -> {
                    while (written[0] < PAGES) {
                        write(shelf, written[0] + 1);
                        written[0]++;
                    }
                });
                assertTrue(String.valueOf(full.getMessage()).contains("no room left"), full.getMessage());
                assertTrue(String.valueOf(full.getMessage()).contains("Nothing was written"), full.getMessage());
                assertTrue(written[0] > 5, "some fitted: " + written[0]);
                asWritten(store, written[0]);
            }
        }
        try (Store store = Store.open(StoreAddress.file(file), Clock.systemUTC())) {
            asWritten(store, written[0]);
            write(store.shelf("Ann"), written[0] + 1);
            asWritten(store, written[0] + 1);
        }
    }

    private static void asWritten(Store store, int count) throws IOException {
        Shelf shelf = store.shelf("");
        assertEquals(count, shelf.names("boats").size());
        assertEquals(Integer.toString(count), shelf.text("last.md").orElseThrow());
        assertEquals(List.of(), Verification.of(store).faults());
    }

    private static void write(Shelf shelf, int number) throws IOException {
        try (Writing writing = shelf.write("number " + number)) {
            writing.put("last.md", Integer.toString(number));
            writing.put("boats/b" + number + ".yaml", ("note: " + number + "\n").repeat(2000));
            writing.commit();
        }
    }
}

package sternwright.bench.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import sternwright.app.demo.InventedFolder;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.files.FolderLayout;
import sternwright.app.files.shelf.FolderShelf;
import sternwright.app.files.shelf.Shelf;
import sternwright.app.files.shelf.ShelfCopy;
import sternwright.app.files.shelf.Writing;
import sternwright.app.store.Store;
import sternwright.app.store.StoreAddress;

/** A yard of many boats: read cold, asked again after one change, one line written; the folder is the peer. */
public final class StoreBench {
    private static final int WRITES = 100;

    private StoreBench() {}

    /** Arguments: boats, 3,000 if left out. */
    public static void main(String[] args) throws IOException {
        int boats = args.length > 0 ? Integer.parseInt(args[0]) : 3000;
        LocalDate today = LocalDate.of(2026, 10, 1);
        Clock noon = Clock.fixed(java.time.Instant.parse("2026-10-01T12:00:00Z"), java.time.ZoneOffset.UTC);
        Path root = Files.createTempDirectory("store-bench");
        Shelf folder = new FolderShelf(Files.createDirectories(root.resolve("yard")));
        new InventedFolder(InventedFolder.Where.NORTH).write(folder, boats, today, 1);
        try (Store store = Store.open(StoreAddress.file(root.resolve("yard.db")), noon)) {
            Shelf shelf = store.shelf("bench");
            double in = seconds(() -> ShelfCopy.all(folder, shelf, "bench"));
            say("taken in: %d boats in %.2f s, %d MB on disk", boats, in, Files.size(root.resolve("yard.db")) >> 20);
            OpenYard ofFolder = new OpenYard(by -> folder, noon);
            OpenYard ofStore = new OpenYard(store, noon);
            double peer = seconds(ofFolder::files);
            double cold = seconds(ofStore::files);
            double dues = seconds(ofStore::dues);
            say(
                    "read cold: folder %.2f s (first, so with a cold machine), store %.2f s, ratio %.2f",
                    peer, cold, cold / peer);
            say("due list of the yard at once after it: %.3f s", dues);
            oneLine(folder, shelf, ofStore);
            double still = seconds(() -> {
                for (int i = 0; i < 1000; i++) {
                    ofStore.files();
                }
            });
            say("yard when nothing has changed: %.0f microseconds", still * 1e3);
        }
        memory(boats);
    }

    private static void oneLine(Shelf folder, Shelf shelf, OpenYard ofStore) throws IOException {
        List<String> ids = List.copyOf(ofStore.files().boats().keySet());
        String name = FolderLayout.hours(ids.get(ids.size() / 2));
        String line = shelf.text(name).orElseThrow().lines().reduce((a, b) -> b).orElseThrow();
        double again = 0;
        double written = 0;
        double inFolder = 0;
        for (int i = 0; i < WRITES; i++) {
            inFolder += seconds(() -> add(folder, name, line));
            written += seconds(() -> add(shelf, name, line));
            again += seconds(() -> {
                ofStore.files();
                ofStore.dues();
            });
        }
        say(
                "one line: folder %.2f ms, store %.2f ms, ratio %.2f (mean of %d)",
                inFolder / WRITES * 1e3, written / WRITES * 1e3, written / inFolder, WRITES);
        say("yard and due list after one line: %.1f ms", again / WRITES * 1e3);
    }

    private static void memory(int boats) {
        for (int i = 0; i < 3; i++) {
            System.gc();
        }
        Runtime machine = Runtime.getRuntime();
        say(
                "heap that stays, two open yards of %d boats: %d MB",
                boats, machine.totalMemory() - machine.freeMemory() >> 20);
    }

    private static void add(Shelf shelf, String name, String line) throws IOException {
        try (Writing writing = shelf.write("a line")) {
            writing.put(name, shelf.text(name).orElseThrow() + line + "\n");
            writing.commit();
        }
    }

    private interface Deed {
        void run() throws IOException;
    }

    private static double seconds(Deed deed) throws IOException {
        long began = System.nanoTime();
        deed.run();
        return (System.nanoTime() - began) / 1e9;
    }

    private static void say(String text, Object... figures) {
        System.out.println(String.format(Locale.ROOT, text, figures));
    }
}

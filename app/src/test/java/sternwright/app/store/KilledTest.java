package sternwright.app.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sternwright.app.files.shelf.Shelf;

/** Killed while it writes: what was acknowledged is there, nothing is half there. The long run is {@code bench/run store-kill}. */
class KilledTest {
    private static final int KILLS = Integer.getInteger("sternwright.kills", 5);
    private static final int WRITES = Integer.getInteger("sternwright.writes", 100);

    @TempDir
    Path folder;

    @Test
    void everyAcknowledgedWriteIsThereAndNoneIsHalfThere() throws Exception {
        Path file = folder.resolve("yard.db");
        Random random = new Random(20261001);
        int acknowledged = 0;
        for (int kill = 0; kill < KILLS; kill++) {
            int least = acknowledged + random.nextInt(WRITES);
            acknowledged = Math.max(acknowledged, writeAndKill(file, acknowledged + 1, least, random));
            try (Store store = Store.open(StoreAddress.file(file), Clock.systemUTC())) {
                Shelf shelf = store.shelf("");
                int last = Integer.parseInt(shelf.text("last.md").orElse("0"));
                List<String> lines = shelf.text("hours/tern.csv")
                        .orElse("number\n")
                        .lines()
                        .skip(1)
                        .toList();
                assertTrue(last >= acknowledged, "acknowledged " + acknowledged + ", there " + last);
                assertTrue(last <= acknowledged + 1, "acknowledged " + acknowledged + ", there " + last);
                assertEquals(last, lines.size(), "both texts of a write or neither");
                for (int i = 0; i < last; i++) {
                    assertEquals(Integer.toString(i + 1), lines.get(i));
                }
                assertEquals(List.of(), Verification.of(store).faults());
                acknowledged = last;
            }
        }
        assertTrue(acknowledged > KILLS);
    }

    /** Kills the writer some moments after it has acknowledged so many, as {@code kill -9} does. */
    private static int writeAndKill(Path file, int from, int least, Random random)
            throws IOException, InterruptedException {
        Process writer = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        WritingOn.class.getName(),
                        file.toString(),
                        Integer.toString(from),
                        "1000000")
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        int last = from - 1;
        try (BufferedReader said =
                new BufferedReader(new InputStreamReader(writer.getInputStream(), StandardCharsets.UTF_8))) {
            String line = said.readLine();
            while (line != null) {
                last = Integer.parseInt(line);
                if (last >= least && writer.isAlive()) {
                    TimeUnit.MICROSECONDS.sleep(random.nextInt(8000));
                    writer.toHandle().destroyForcibly();
                }
                line = said.readLine();
            }
        }
        writer.waitFor();
        return last;
    }
}

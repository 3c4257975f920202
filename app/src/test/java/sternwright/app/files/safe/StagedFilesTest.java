package sternwright.app.files.safe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Several files change together or not at all, wherever the program is stopped. */
class StagedFilesTest {
    private static final List<String> NAMES = List.of("history/a.csv", "history/b.csv", "hours/a.csv");

    @TempDir
    Path root;

    @Test
    void stoppedAnywhereNothingIsTornOrHalfDone() throws IOException {
        int steps = stepsOfAWholeRun();
        assertTrue(steps > 2 * NAMES.size(), "stages, says ready and moves: " + steps);
        for (int stop = 1; stop <= steps; stop++) {
            writeAll("old");
            int last = stop;
            List<String> seen = new ArrayList<>();
            StagedFiles staged = new StagedFiles(root, what -> {
                seen.add(what);
                if (seen.size() == last) {
                    throw new IOException("stopped after " + what);
                }
            });
            NAMES.forEach(n -> staged.put(root.resolve(n), "new " + n));
            assertThrows(IOException.class, staged::commit);
            YardLock.take(root).close();
            boolean done = seen.contains("ready");
            for (String name : NAMES) {
                assertEquals(done ? "new " + name : "old", Files.readString(root.resolve(name)), "stopped at " + seen);
            }
            assertFalse(StagedFiles.unfinished(root), "the next who opens the yard clears away");
        }
    }

    @Test
    void aFileThatCannotBeReplacedIsLeftAsItWas() throws IOException {
        Path folder = Files.createDirectories(root.resolve("there").resolve("inside"));
        assertThrows(IOException.class, () -> SafeFile.write(root.resolve("there"), "text"));
        assertTrue(Files.isDirectory(folder));
        try (var left = Files.list(root)) {
            assertEquals(1, left.count(), "no file is left beside it");
        }
    }

    @Test
    void twoProgramsCannotHoldOneYard() throws IOException {
        try (YardLock first = YardLock.take(root)) {
            IOException told = assertThrows(IOException.class, () -> YardLock.take(root));
            assertTrue(told.toString().contains("another program is writing"), told::toString);
        }
        YardLock.take(root).close();
    }

    private int stepsOfAWholeRun() throws IOException {
        int[] steps = {0};
        StagedFiles staged = new StagedFiles(root, what -> steps[0]++);
        NAMES.forEach(n -> staged.put(root.resolve(n), "x"));
        staged.commit();
        return steps[0];
    }

    private void writeAll(String text) throws IOException {
        for (String name : NAMES) {
            SafeFile.write(root.resolve(name), text);
        }
    }
}

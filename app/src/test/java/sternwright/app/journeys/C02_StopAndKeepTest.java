package sternwright.app.journeys;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sternwright.app.demo.InventedFolder;
import sternwright.app.files.SeasonFolder;
import sternwright.season.dated.Published;

/** Ctrl-C on the real process: an hour is asked for, the first plan seen, and the best so far is kept, proved, shown and written. */
class C02_StopAndKeepTest {
    private static final LocalDate AUTUMN = LocalDate.of(2026, 9, 1);

    /** Far longer than it takes; only a process that does not stop meets it. */
    private static final long MOST_SECONDS = 120;

    @TempDir
    Path folder;

    @Test
    void interruptedSearchKeepsItsBestPlan() throws IOException, InterruptedException {
        assumeTrue(Files.isExecutable(Path.of("/bin/kill")), "no kill on this system to send the interrupt with");
        Path yard = folder.resolve("yard");
        new InventedFolder(InventedFolder.Where.NORTH).write(yard, 8, AUTUMN, 3);
        Path board = folder.resolve("board.html");
        Process season = start(yard, "season", "--seconds", "3600", "--publish", "--board", board.toString());
        try {
            waitFor(season, "of the time: best ");
            new ProcessBuilder("/bin/kill", "-INT", Long.toString(season.pid()))
                    .start()
                    .waitFor();
            assertTrue(season.waitFor(MOST_SECONDS, TimeUnit.SECONDS), "still searching: " + err());
        } finally {
            season.destroyForcibly();
        }
        assertTrue(err().contains("Stopped; this is the best plan so far."), err());
        assertTrue(err().contains("Published"), err());
        String shown = Files.readString(folder.resolve("out"));
        assertTrue(shown.contains("Proved by both judges.") && shown.contains("8 boats"), shown);
        List<Published> plan = SeasonFolder.plan(yard, Path.of("season.csv"), AUTUMN);
        assertFalse(plan.isEmpty());
        assertTrue(Files.readString(board).contains("</html>"));
        assertEquals(
                0, start(yard, "season", "--seconds", "0.5").waitFor(), "planning on from the kept plan: " + err());
    }

    private void waitFor(Process season, String words) throws IOException, InterruptedException {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(MOST_SECONDS);
        while (!err().contains(words) && season.isAlive() && System.nanoTime() < end) {
            Thread.sleep(50);
        }
        assertTrue(season.isAlive(), "ended before it was interrupted: " + err());
    }

    private String err() throws IOException {
        return Files.readString(folder.resolve("err"));
    }

    private Process start(Path yard, String... args) throws IOException {
        ProcessBuilder program = new ProcessBuilder(
                ProcessHandle.current().info().command().orElse("java"),
                "-cp",
                System.getProperty("java.class.path"),
                "sternwright.app.Main",
                "--yard",
                yard.toString(),
                "--date",
                AUTUMN.toString());
        program.command().addAll(List.of(args));
        program.environment().remove("JAVA_TOOL_OPTIONS");
        return program.redirectOutput(folder.resolve("out").toFile())
                .redirectError(folder.resolve("err").toFile())
                .start();
    }
}

package sternwright.app.journeys;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The demo, on a few boats, through the real program. */
class A09_DemoTest {
    @TempDir
    Path temp;

    @Test
    void anInventedYardIsPlannedAndItsPapersAreWritten() throws IOException {
        Path folder = temp.resolve("yard-demo");
        Told told = new Told("2026-09-14");
        assertEquals(0, told.run("demo", "--folder", folder.toString(), "--boats", "4"), told::all);
        assertTrue(told.out().contains("Tidewrack Yard (invented)"), told::all);
        assertTrue(told.out().contains("What is due"), told::all);
        assertTrue(told.out().contains("of 4 boats are proven within 1 %"), told::all);
        assertTrue(told.out().contains("What to try next"), told::all);
        try (Stream<Path> papers = Files.list(folder.resolve("papers"))) {
            List<String> names = papers.map(p -> p.getFileName().toString()).toList();
            assertEquals(5, names.size(), names.toString());
            assertTrue(
                    names.stream().allMatch(n -> n.matches("(card|estimate|season-board).*\\.(html|pdf)")),
                    names.toString());
        }
        assertEquals(0, told.run(folder, "check"), told::all);
        assertEquals(0, told.run(folder, "due"), told::all);

        assertEquals(2, told.run("demo", "--folder", folder.toString()), told::all);
        assertTrue(told.err().contains("left as it is"), told::all);
    }

    @Test
    void southOfTheEquator() {
        Told told = new Told("2026-03-14");
        Path folder = temp.resolve("south");
        assertEquals(0, told.run("demo", "--south", "--folder", folder.toString(), "--boats", "2"), told::all);
        assertTrue(told.out().contains("Gumtree Slip (invented)"), told::all);
        assertTrue(told.out().contains("A$") || told.out().contains("AUD"), told::all);
    }

    @Test
    void aNumberOfBoatsThatCannotBeIsSaid() {
        Told told = new Told("2026-09-14");
        assertEquals(
                2,
                told.run("demo", "--boats", "0", "--folder", temp.resolve("x").toString()));
        assertTrue(told.err().contains("--boats"), told::all);
        assertTrue(Files.notExists(temp.resolve("x")));
    }
}

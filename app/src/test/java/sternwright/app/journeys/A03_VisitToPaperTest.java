package sternwright.app.journeys;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From a boat's file to the job card and the estimate of its next visit, through the real program. */
class A03_VisitToPaperTest {
    @TempDir
    Path folder;

    private Told told = new Told("2026-09-14");

    @BeforeEach
    void writeYard() {
        told = new Told("2026-09-14");
        assertEquals(0, told.run("new", "yard", folder.resolve("yard").toString()));
        assertEquals(
                0,
                run("new", "boat", "--arrangement", "saildrive", "--id", "grey-plover", "--name", "Grey Plover"),
                told::all);
    }

    private int run(String... args) {
        return told.run(folder.resolve("yard"), args);
    }

    @Test
    void aCardIsWrittenAndSaysWhatIsStillToSettle() throws IOException {
        assertEquals(0, run("card", "grey-plover", "--months", "12"), told::all);
        assertTrue(told.out().startsWith("Job card Grey Plover, "), told::all);
        assertTrue(told.out().contains("no hour-meter reading on record"), told::all);
        List<Path> written = written("yard/papers");
        assertEquals(2, written.size());
        assertTrue(Files.size(written.get(1)) > 20_000);
    }

    @Test
    void anEstimateAnswersOtherProgramsToo() {
        Path out = folder.resolve("for owner");
        assertEquals(0, run("--json", "estimate", "grey-plover", "--months", "12", "--out", out.toString()), told::all);
        assertTrue(told.out().contains("\"complete\" : "), told::all);
        assertTrue(told.out().contains("\"gross\" : {"), told::all);
        assertTrue(told.out().contains("/estimate-grey-plover-"), told::all);
    }

    @Test
    void whatIsDeclinedIsEchoedWithWhoSigned() {
        assertEquals(
                0,
                run("estimate", "grey-plover", "--months", "12", "--decline", "1,2", "--signed-by", "A. Owner"),
                told::all);
        assertTrue(told.out().contains("Declined, 2 of "), told::all);
        assertTrue(told.out().contains("signed by A. Owner:\n  1  "), told::all);
        assertTrue(told.out().contains("--refused-by \"A. Owner\""), told::all);
        assertEquals(2, run("estimate", "grey-plover", "--months", "12", "--signed-by", "A. Owner"));
        assertTrue(told.err().contains("--signed-by: nothing is declined"), told::all);
    }

    @Test
    void aVisitOrALineThatIsNotThereIsSaidAndNothingIsWritten() throws IOException {
        assertEquals(2, run("card", "grey-plover", "--months", "12", "--visit", "99"));
        assertTrue(told.err().contains("grey-plover has no visit 99; expected one of 1 "), told::all);
        assertEquals(2, run("estimate", "grey-plover", "--months", "12", "--decline", "999"));
        assertTrue(told.err().contains("there is no line 999"), told::all);
        assertEquals(2, run("card", "grey-plover", "--months", "0"));
        assertFalse(Files.exists(folder.resolve("yard/papers")));
    }

    private List<Path> written(String name) throws IOException {
        try (var all = Files.list(folder.resolve(name))) {
            return all.sorted().toList();
        }
    }
}

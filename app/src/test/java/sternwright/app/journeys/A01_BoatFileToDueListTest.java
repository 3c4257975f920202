package sternwright.app.journeys;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From a boat's file to its due list, through the real program. */
class A01_BoatFileToDueListTest {
    @TempDir
    Path folder;

    private Told told = new Told("2026-11-25");

    @BeforeEach
    void writeYard() {
        told = new Told("2026-11-25");
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
    void aNewBoatHasUnknownHistoryAndSaysSo() {
        assertEquals(0, run("due", "grey-plover"), told::all);
        assertTrue(told.out().contains("history unknown: nobody knows"), told::all);
        assertTrue(told.out().contains("renew diaphragm seal"));
        assertTrue(told.out().contains("service practice (common practice, no source)"));
    }

    @Test
    void historyMovesTheDueListAndTheReasonSaysWhy() throws IOException {
        Files.writeString(folder.resolve("yard/history/grey-plover.csv"), """
                date,installation,part,rule,outcome,hours,who,readings,note
                2025-10-10,main,engine,change-engine-oil,done,640,somebody,,
                """);
        assertEquals(0, run("due", "grey-plover", "--rule", "change-engine-oil", "--json"), told::all);
        assertTrue(told.out().contains("\"due-on\" : \"2026-10-10\""), told::all);
        assertTrue(told.out().contains("12 months after it was last done"), told::all);
        assertEquals(0, run("due", "--csv", "--rule", "change-engine-oil"), told::all);
        assertTrue(told.out().startsWith("boat,installation,part,rule,work,state,due-on"), told::all);
    }

    @Test
    void anUnknownBoatOrRuleNamesTheNearest() {
        assertEquals(2, run("due", "grey-plovr"));
        assertTrue(told.err().contains("grey-plover"), told::all);
        assertEquals(2, run("due", "--rule", "change-engine-oill"));
        assertTrue(told.err().contains("change-engine-oil"), told::all);
    }

    @Test
    void aFolderThatIsNoYardIsSaid() {
        assertEquals(2, told.run(folder, "due"));
        assertTrue(told.err().contains("yard.yaml"), told::all);
    }
}

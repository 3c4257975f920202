package sternwright.app.journeys;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From the due list to the visits and the arguments about them, through the real program. */
class A02_DueListToVisitsTest {
    @TempDir
    Path folder;

    private Told told = new Told("2026-09-01");

    @BeforeEach
    void writeYard() {
        told = new Told("2026-09-01");
        assertEquals(0, told.run("new", "yard", folder.resolve("yard").toString()));
        assertEquals(
                0, run("new", "boat", "--arrangement", "saildrive", "--id", "plover", "--name", "Plover"), told::all);
    }

    private int run(String... args) {
        return told.run(folder.resolve("yard"), args);
    }

    @Test
    void unknownHistoryIsClearedByTheFirstVisitWithProofPriceAndAlternatives() {
        assertEquals(0, run("visits", "plover", "--months", "12", "--seconds", "10"), told::all);
        String said = told.out();
        assertTrue(said.contains("A plan at once"), said);
        assertTrue(said.contains("no plan"), said);
        assertTrue(said.contains("Visit 1: "), said);
        assertTrue(said.contains("renew diaphragm seal"), said);
        assertTrue(said.contains("bundling saves"), said);
        assertTrue(said.contains("from the stores: "), said);
        assertTrue(said.contains("One visit fewer") && said.contains("One visit more"), said);
    }

    @Test
    void whatIfLeftIsAnsweredInMoneyAndRisk() {
        assertEquals(
                0,
                run(
                        "visits",
                        "plover",
                        "--months",
                        "12",
                        "--no-alternatives",
                        "--left",
                        "main/engine:change-engine-oil=2027-03-01"),
                told::all);
        assertTrue(told.out().contains("is left until 1 Mar 2027"), told::all);
    }

    @Test
    void theYardHasOneLineABoatAndJsonHasReasonsAndSources() {
        assertEquals(0, run("visits", "--months", "12"), told::all);
        assertTrue(told.out().contains("1 boats, 1 planned") || told.out().contains("1 boat, 1 planned"), told::all);
        assertEquals(0, run("visits", "plover", "--months", "12", "--json"), told::all);
        assertTrue(told.out().contains("\"saved-by-bundling\""), told::all);
        assertTrue(told.out().contains("\"source\" : \"service practice"), told::all);
    }

    @Test
    void badQuestionsAreRefused() {
        assertEquals(2, run("visits", "plover", "--months", "0"));
        assertTrue(told.err().contains("--months"), told::all);
        assertEquals(2, run("visits", "plover", "--months", "6", "--left", "main/engine=2027-03-01"));
        assertTrue(told.err().contains("INSTALLATION/PART:RULE=DATE"), told::all);
        assertEquals(2, run("visits", "plovr"));
        assertFalse(told.err().contains("Exception"), told::all);
    }
}

package sternwright.app.journeys;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An overdue lay-up work does not wait for the next lay-up when the boat is visited before. */
class OverdueWorkTest {
    @TempDir
    Path folder;

    @Test
    void oilTenMonthsOverdueIsChangedAtTheFirstVisit() throws IOException {
        Told told = new Told("2026-12-01");
        Path yard = folder.resolve("yard");
        assertEquals(0, told.run("new", "yard", yard.toString()));
        assertEquals(
                0, told.run(yard, "new", "boat", "--arrangement", "saildrive", "--id", "plover", "--name", "Plover"));
        Files.writeString(yard.resolve("history/plover.csv"), """
                date,installation,part,rule,outcome,hours,who,readings,note
                2025-02-01,main,engine,change-engine-oil,done,,somebody,,
                """);
        assertEquals(0, told.run(yard, "visits", "plover", "--no-alternatives", "--months", "12"), told::all);
        String first =
                told.out().substring(told.out().indexOf("Visit 1:"), told.out().indexOf("Visit 2:"));
        assertTrue(first.contains("change engine oil and filter"), told::all);
    }
}

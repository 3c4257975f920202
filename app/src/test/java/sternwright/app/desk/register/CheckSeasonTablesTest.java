package sternwright.app.desk.register;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sternwright.app.demo.InventedFolder;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.problem.Problem;
import sternwright.app.files.shelf.FolderShelf;

/** A check of the yard reads the season's tables too, and says file, line, what is wrong and what to do. */
class CheckSeasonTablesTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 9, 1);

    @TempDir
    Path folder;

    private Path yard = Path.of("");
    private String boat = "";

    @BeforeEach
    void aYard() throws IOException {
        yard = folder.resolve("yard");
        boat = new InventedFolder(InventedFolder.Where.NORTH)
                .write(yard, 3, TODAY, 3)
                .boats()
                .get(0)
                .id();
    }

    private void line(String file, String header, String line) throws IOException {
        Path at = yard.resolve(file);
        String before = Files.exists(at) ? "" : header + "\n";
        Files.writeString(at, before + line + "\n", StandardOpenOption.CREATE, StandardOpenOption.APPEND);
    }

    private List<String> wrong() {
        BadInput bad = assertThrows(BadInput.class, () -> CheckYard.check(new FolderShelf(yard), TODAY));
        return bad.problems().stream().map(Problem::text).toList();
    }

    private static void says(List<String> wrong, String... phrases) {
        for (String phrase : phrases) {
            assertTrue(wrong.stream().anyMatch(w -> w.contains(phrase)), phrase + " is not in " + wrong);
        }
    }

    @Test
    void soundTablesPass() throws IOException {
        line(
                "promises.csv",
                "boat,visit,operation,date,promised-on",
                boat + ",winter ashore 2026/27,launch,2027-04-20,2026-08-01");
        assertEquals(3, CheckYard.check(new FolderShelf(yard), TODAY).boats().size());
    }

    @Test
    void everyNameThatLeadsNowhereIsSaidWithItsLine() throws IOException {
        line("dates.csv", "", "nobody,out-from,2026-10-01,,");
        line("dates.csv", "", boat + ",part-in,2026-10-01,change-engine-oyl,");
        line(
                "promises.csv",
                "boat,visit,operation,date,promised-on",
                "nobody,winter ashore 2026/27,launch,2027-04-20,2026-08-01");
        line("away.csv", "who,from,to,why", "p99,2026-10-01,2026-10-02,");
        String agreed = "boat,month,place,installation,part,rule,agreed-on,who";
        line("agreed.csv", agreed, "nobody,2026-10,ashore,main,engine,change-engine-oil,2026-08-01,");
        line("agreed.csv", agreed, boat + ",2026-10,ashore,nowhere,engine,change-engine-oyl,2026-08-01,");
        List<String> wrong = wrong();
        says(
                wrong,
                "there is no boat \"nobody\"",
                "Perhaps \"change-engine-oil\" is meant.",
                "promises.csv:2: boat: there is no boat \"nobody\"",
                "away.csv:2: who: there is no one of the crew and no hoist \"p99\"",
                "agreed.csv:2: boat: there is no boat \"nobody\"",
                "agreed.csv:3: rule: there is no rule \"change-engine-oyl\"",
                "agreed.csv:3: installation: there is no installation on " + boat + " \"nowhere\"");
        assertEquals(7, wrong.size(), wrong.toString());
    }

    @Test
    void wrongCellsAndFieldsAreSaid() throws IOException {
        line("tides.csv", "", "soon,4.2");
        line(
                "agreed.csv",
                "boat,month,place,installation,part,rule,agreed-on,who",
                boat + ",October,ashore,main,engine,change-engine-oil,2026-08-01,");
        line("away.csv", "who,from,to,why", "p1,2026-10-09,2026-10-02,");
        Files.writeString(
                yard.resolve("resources.yaml"),
                Files.readString(yard.resolve("resources.yaml")).replace("lifts-a-day", "lifts-per-day"));
        says(
                wrong(),
                "tides.csv:",
                "agreed.csv:2: month: found \"October\"",
                "away.csv:2: ",
                "resources.yaml:",
                "lifts-a-day");
    }
}

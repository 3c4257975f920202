package sternwright.app.journeys;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Tables go out to a spreadsheet and come in again. */
class B04_TablesTest {
    @TempDir
    Path folder;

    Path yard = Path.of("yard");
    Path other = Path.of("other");

    @BeforeEach
    void twoYardsOneEmpty() {
        yard = folder.resolve("yard");
        other = folder.resolve("other");
        Answer.by(folder, "new", "yard", yard.toString()).done();
        Answer.by(folder, "new", "yard", other.toString()).done();
        Answer.by(yard, "new", "boat", "--arrangement", "saildrive", "--id", "tern", "--owner", "A. Person, \"AP\"")
                .done();
        Answer.by(yard, "new", "boat", "--arrangement", "shaft", "--twin", "--id", "heron", "--power", "37.5")
                .done();
        Answer.by(yard, "hours", "tern", "main", "100.5", "--day", "2025-05-01").done();
        Answer.by(yard, "hours", "heron", "port", "90", "--new-meter", "0", "--day", "2025-05-01")
                .done();
        Answer.by(yard, "record", "tern", "--work", "change-engine-oil", "--hours", "130", "--note", "two\nlines; more")
                .done();
    }

    @Test
    void whatGoesOutComesInAgain() throws IOException {
        String[] twice = {"record", "heron", "--happened", "grounding", "--part", "port/engine", "--day", "2026-11-01"};
        Answer.by(yard, twice).done();
        Answer.by(
                        yard,
                        "strike",
                        "heron",
                        "--happened",
                        "grounding",
                        "--day",
                        "2026-11-01",
                        "--who",
                        "AB",
                        "--why",
                        "tern")
                .done();
        Answer.by(yard, twice).done();
        for (String what : new String[] {"boats", "hours", "history"}) {
            Path table = folder.resolve(what + ".csv");
            Answer.by(yard, "export", what, table.toString()).done().says("Wrote");
            Answer.by(other, "import", what, table.toString()).done();
            assertEquals(
                    Files.readString(table),
                    Answer.by(other, "export", what).done().out(),
                    what);
            String again =
                    Answer.by(other, "import", what, table.toString()).done().out();
            assertTrue(again.startsWith("0 "), "what is there is passed over: " + again);
        }
        assertEquals(
                Files.readString(yard.resolve("history/tern.csv")),
                Files.readString(other.resolve("history/tern.csv")));
        assertEquals(
                Answer.by(yard, "due", "heron").done().out(),
                Answer.by(other, "due", "heron").done().out(),
                "what was struck is struck there too");
        Path stray = folder.resolve("stray.csv");
        Files.writeString(stray, """
                boat,date,installation,part,rule,struck-on,struck-by,struck-why
                heron,2026-01-05,port,engine,change-engine-oil,2026-11-02,AB,twice
                heron,2026-01-06,port,engine,change-engine-oil,2026-11-02,AB,
                """);
        Answer.by(other, "import", "history", stray.toString())
                .refused("stray.csv:2: struck-on: no line above says the same", "stray.csv:3: a struck line needs who");
    }

    @Test
    void anyBadRowKeepsEverythingOut() throws IOException {
        Path table = folder.resolve("history.csv");
        Files.writeString(table, """
                boat,date,installation,part,rule,hours
                tern,2026-01-05,main,engine,change-engine-oil,
                turn,2026-01-05,main,engine,change-engine-oil,
                heron,2026-01-05,port,engin,change-engine-oil,
                heron,2027-01-05,port,engine,change-engine-oil,-4
                """);
        String before = Files.readString(yard.resolve("history/tern.csv"));
        Answer.by(yard, "import", "history", table.toString())
                .refused(
                        "history.csv:3: boat: there is no boat \"turn\". Perhaps \"tern\" is meant",
                        "history.csv:4: part: boat heron has no part \"port/engin\"",
                        "history.csv:5: date: 2027-01-05 lies in the future",
                        "history.csv:5: hours: found -4",
                        "nothing was written");
        assertEquals(before, Files.readString(yard.resolve("history/tern.csv")));
        assertFalse(Files.exists(yard.resolve("history/heron.csv")));
        Answer.by(yard, "import", "history", folder.resolve("none.csv").toString())
                .refused("there is no such file");
        Answer.by(yard, "import", "histroy", table.toString()).refused("Perhaps \"history\" is meant");
    }

    @Test
    void aTableOfHoursIsSeenBesideWhatTheMetersSaid() throws IOException {
        Path table = folder.resolve("hours.csv");
        Files.writeString(table, """
                boat,date,installation,hours,new-meter-hours
                tern,2025-06-01,main,90,
                tern,2025-07-01,main,150,
                tern,2025-08-01,main,1580,
                tern,2025-09-01,main,170,
                tern,2026-01-01,mian,180,
                heron,2025-05-02,port,400,
                heron,2025-05-20,starboard,-3,
                """);
        String before = Files.readString(yard.resolve("hours/tern.csv"));
        Answer.by(yard, "import", "hours", table.toString())
                .refused(
                        "hours.csv:2: hours: found 90 h for main, less than the 100.5 h read on 2025-05-01",
                        "hours.csv:4: hours: found 1580 h for main, more than the 130 h read later, on 2026-11-25",
                        "hours.csv:6: installation: boat tern has no installation \"mian\"",
                        "hours.csv:7: hours: found 400 h for port, 400 h more than on 2025-05-01, and a day has",
                        "hours.csv:8: hours: found -3",
                        "nothing was written");
        assertEquals(before, Files.readString(yard.resolve("hours/tern.csv")));
        Files.writeString(table, """
                boat,date,installation,hours,new-meter-hours
                heron,2025-06-01,port,5,
                heron,2025-09-01,port,40,
                heron,2025-10-01,port,60,0
                heron,2025-11-01,port,12,
                heron,2025-12-01,port,500,
                heron,2026-01-01,port,30,
                """);
        Answer.by(yard, "import", "hours", table.toString())
                .refused(
                        "hours.csv:6: hours: found 500 h for port, which does not fit the other readings",
                        "One problem; nothing was written.");
        Answer.by(yard, "import", "hours", table.toString(), "--as-read")
                .done()
                .says("6 lines added to 1 boat; 0 were there already.");
        Answer.by(yard, "check").done().says("hours/heron.csv");
    }

    @Test
    void hoursOfImportedHistoryReachTheMeterLikeThoseOfRecordedWork() throws IOException {
        Path table = folder.resolve("history.csv");
        Files.writeString(table, """
                boat,date,installation,part,rule,hours
                tern,2025-06-01,main,engine,change-engine-oil,110
                tern,2025-06-01,main,belts,inspect-belts,110
                tern,2025-09-01,main,engine,change-engine-oil,95
                heron,2026-06-01,port,engine,change-engine-oil,120
                """);
        Answer.by(yard, "import", "history", table.toString())
                .refused("history.csv:4: hours: found 95 h for main, less than the 100.5 h read on 2025-05-01");
        Files.writeString(table, Files.readString(table).replace(",95\n", ",125\n"));
        Answer.by(yard, "import", "history", table.toString())
                .done()
                .says("4 lines added to 2 boats", "3 new meter readings");
        assertEquals(
                "2026-06-01,port,30,,",
                Files.readAllLines(yard.resolve("hours/heron.csv")).get(2));
        Answer.by(yard, "import", "history", table.toString())
                .done()
                .says("0 lines added to 2 boats; 4 were there", "0 new meter readings");
    }

    @Test
    void aRegisterThatSaysOtherwiseIsAskedAbout() throws IOException {
        Path table = folder.resolve("boats.csv");
        Answer.by(yard, "export", "boats", table.toString()).done();
        String text = Files.readString(table);
        Files.writeString(table, text.replace("tern,tern,", "tern,Arctic Tern,"));
        Answer.by(yard, "import", "boats", table.toString())
                .refused("boat tern is there already and says otherwise", "--update");
        Answer.by(yard, "import", "boats", table.toString(), "--update")
                .done()
                .says("0 boats added, 1 changed, 1 there already that says the same");
        Answer.by(yard, "boats").done().says("Arctic Tern");
        Files.writeString(table, text.replaceFirst("heron,heron,", "heron,Grey Heron,"));
        Answer.by(yard, "import", "boats", table.toString(), "--update")
                .refused("says something else of boat heron than line");
    }
}

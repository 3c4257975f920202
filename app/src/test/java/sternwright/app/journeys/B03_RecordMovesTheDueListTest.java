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

/** Work is written down and the due list moves. */
class B03_RecordMovesTheDueListTest {
    @TempDir
    Path folder;

    Path yard = Path.of("yard");

    @BeforeEach
    void aYardWithOneBoat() {
        yard = folder.resolve("yard");
        Answer.by(folder, "new", "yard", yard.toString()).done();
        Answer.by(yard, "new", "boat", "--arrangement", "saildrive", "--id", "tern")
                .done();
    }

    @Test
    void oneWorkWithMeterAndReading() throws IOException {
        Answer.by(
                        yard,
                        "record",
                        "tern",
                        "--work",
                        "change-engine-oil",
                        "--hours",
                        "412",
                        "--who",
                        "AB",
                        "--day",
                        "2026-11-20",
                        "--note",
                        "with filter")
                .done()
                .says(
                        "Wrote 2026-11-20  main/engine  change-engine-oil  done  at 412.0 h",
                        "history unknown",
                        "coming 2027-11-20");
        assertEquals(
                "date,installation,part,rule,outcome,hours,who,readings,note\n"
                        + "2026-11-20,main,engine,change-engine-oil,,412,AB,,with filter\n",
                Files.readString(yard.resolve("history/tern.csv")));
        assertEquals(
                "date,installation,hours,new-meter-hours,who\n2026-11-20,main,412,,AB\n",
                Files.readString(yard.resolve("hours/tern.csv")));
    }

    @Test
    void nothingIsWrittenAfterTheClocksDayWhateverDayIsAskedFor() {
        Answer.by(yard, "record", "tern", "--work", "change-engine-oil", "--date", "2099-01-01")
                .refused("2099-01-01 lies in the future");
        assertFalse(Files.exists(yard.resolve("history/tern.csv")));
    }

    @Test
    void hoursAreCountedOverAMeterChange() throws IOException {
        Answer.by(yard, "hours", "tern", "main", "1000", "--day", "2025-05-01").done();
        Answer.by(yard, "hours", "tern", "main", "1010", "--new-meter", "0", "--day", "2025-06-01")
                .done();
        Answer.by(yard, "record", "tern", "--work", "change-engine-oil", "--hours", "40", "--day", "2026-06-01")
                .done()
                .says("at 1050.0 h");
        assertTrue(Files.readString(yard.resolve("history/tern.csv")).contains(",1050,"));
    }

    @Test
    void aMeterOutOfLineIsAskedAbout() throws IOException {
        Answer.by(yard, "hours", "tern", "main", "1000", "--day", "2025-05-01").done();
        Answer.by(yard, "hours", "tern", "main", "980", "--day", "2025-06-01")
                .refused("less than the 1000.0 h read on 2025-05-01", "--as-read", "--new-meter");
        Answer.by(yard, "hours", "tern", "main", "9000", "--day", "2025-05-11")
                .refused("10 days have no more than 240.0 h");
        Answer.by(yard, "hours", "tern", "main", "-1").refused("-1");
        Answer.by(yard, "hours", "tern", "mian", "1100").refused("Perhaps \"main\" is meant");
        assertEquals(2, Files.readAllLines(yard.resolve("hours/tern.csv")).size());
        Answer.by(yard, "hours", "tern", "main", "980", "--day", "2025-06-01", "--as-read")
                .done();
        Answer.by(yard, "hours", "tern", "main", "1100", "--day", "2026-06-01").done();
        Answer.by(yard, "check").done().says("hours/tern.csv:", "does not fit the others and is passed over");
    }

    @Test
    void refusalsAndHappenings() {
        Answer.by(yard, "record", "tern", "--work", "renew-diaphragm-seal", "--refused-by", "A. Owner")
                .done()
                .says("refused", "refused by owner");
        Answer.by(yard, "record", "tern", "--happened", "grounding").done().says("main/engine  grounding  happened");
        Answer.by(yard, "record", "tern", "--happened", "hit a rock").refused("a short name such as grounding");
    }

    @Test
    void aVisitAsATable() throws IOException {
        Path visit = folder.resolve("visit.csv");
        Files.writeString(visit, """
                date;installation;part;rule;who;readings
                2026-11-02;main;engine;change-engine-oil;AB;
                2026-11-02;main;leg;change-saildrive-oil;AB;
                """);
        Answer.by(yard, "record", "tern", "--csv", visit.toString()).done().says("main/leg", "coming");
        assertEquals(3, Files.readAllLines(yard.resolve("history/tern.csv")).size());
        Files.writeString(visit, Files.readString(visit).replace("change-saildrive-oil", "change-saildrive-oyl"));
        Answer.by(yard, "record", "tern", "--csv", visit.toString())
                .refused("visit.csv:3: rule: there is no rule", "Perhaps \"change-saildrive-oil\" is meant");
        assertEquals(3, Files.readAllLines(yard.resolve("history/tern.csv")).size());
    }

    @Test
    void whatCannotBeIsRefusedAndNothingWritten() {
        Answer.by(yard, "record", "tern", "--work", "change-engine-oyl")
                .refused("Perhaps \"change-engine-oil\" is meant");
        Answer.by(yard, "record", "tern", "--work", "change-engine-oil", "--part", "main/enigne")
                .refused("Perhaps \"main/engine\" is meant");
        Answer.by(yard, "record", "tern", "--work", "change-engine-oil", "--part", "main/leg")
                .refused("is not for part main/leg");
        Answer.by(yard, "record", "tern", "--work", "change-engine-oil", "--day", "2026-11-26")
                .refused("lies in the future");
        Answer.by(yard, "record", "tern", "--work", "change-engine-oil", "--day", "yesterday")
                .refused("--day");
        Answer.by(yard, "record", "tern", "--work", "change-engine-oil", "--reading", "drip")
                .refused("name=value");
        Answer.by(yard, "record", "tern").refused("Say what was done");
        assertFalse(Files.exists(yard.resolve("history/tern.csv")));
    }
}

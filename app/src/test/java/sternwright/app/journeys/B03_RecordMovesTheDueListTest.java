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
                        "Wrote history/tern.csv:\n  20 Nov 2026  main/engine  change-engine-oil  done  at 412 h\n",
                        "Wrote hours/tern.csv:\n  20 Nov 2026  main  412 h\n",
                        "history unknown",
                        "coming 20 Nov 2027");
        assertEquals(
                "date,installation,part,rule,outcome,hours,who,readings,note,findings\n"
                        + "2026-11-20,main,engine,change-engine-oil,,412,AB,,with filter,\n",
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
                .says("at 1050 h");
        assertTrue(Files.readString(yard.resolve("history/tern.csv")).contains(",1050,"));
    }

    @Test
    void aMeterOutOfLineIsAskedAbout() throws IOException {
        Answer.by(yard, "hours", "tern", "main", "1000", "--day", "2025-05-01").done();
        Answer.by(yard, "hours", "tern", "main", "980", "--day", "2025-06-01")
                .refused("less than the 1000 h read on 2025-05-01", "--as-read", "if the meter was replaced");
        Answer.by(yard, "hours", "tern", "main", "9000", "--day", "2025-05-11")
                .refused("10 days have no more than 240 h");
        Answer.by(yard, "hours", "tern", "main", "-1").refused("-1");
        Answer.by(yard, "hours", "tern", "mian", "1100").refused("Perhaps \"main\" is meant");
        assertEquals(2, Files.readAllLines(yard.resolve("hours/tern.csv")).size());
        Answer.by(yard, "hours", "tern", "main", "980", "--day", "2025-06-01", "--as-read")
                .done();
        Answer.by(yard, "hours", "tern", "main", "1100", "--day", "2026-06-01").done();
        Answer.by(yard, "check").done().says("hours/tern.csv:", "does not fit the others and is passed over");
    }

    @Test
    void aDigitTooManyIsAskedAboutAndWaitsForASecondReading() throws IOException {
        Answer.by(yard, "hours", "tern", "main", "160", "--day", "2024-05-01").done();
        Answer.by(yard, "hours", "tern", "main", "382", "--day", "2025-04-20").done();
        String[] slip = {"hours", "tern", "main", "5040", "--day", "2025-11-20"};
        Answer.by(yard, slip)
                .refused(
                        "22 h a day since 2025-04-20, after 0.6 h a day before",
                        "one digit less it is 504 h",
                        "--as-read");
        Answer.by(yard, with(slip, "--as-read")).done();
        Answer.by(yard, "check").done().says("hours/tern.csv:", "passed over until a second reading bears it out");
        Answer.by(yard, with(slip, "--as-read")).done();
        assertFalse(Answer.by(yard, "check").done().out().contains("passed over"));
    }

    private static String[] with(String[] words, String one) {
        String[] more = java.util.Arrays.copyOf(words, words.length + 1);
        more[words.length] = one;
        return more;
    }

    @Test
    void aLineWrittenTwiceLosesOneOfTheTwo() throws IOException {
        String[] oil = {"record", "tern", "--work", "change-engine-oil", "--hours", "412", "--day", "2026-11-20"};
        Answer.by(yard, oil).done();
        String once = Answer.by(yard, "due", "tern", "--json").done().out();
        Answer.by(yard, oil).done();
        String[] strike = {
            "strike", "tern", "--work", "change-engine-oil", "--day", "2026-11-20", "--who", "AB", "--why", "twice"
        };
        Answer.by(yard, strike)
                .done()
                .says("Struck in history/tern.csv:\n  20 Nov 2026  main/engine  change-engine-oil", "stays as it was");
        assertEquals(once, Answer.by(yard, "due", "tern", "--json").done().out());
        Answer.by(yard, strike).done().says("The due list moves", "history unknown");
        Answer.by(yard, strike).refused("no line that holds is the one meant");
        Answer.by(yard, oil).done();
        assertEquals(once, Answer.by(yard, "due", "tern", "--json").done().out(), "written again after the strikes");
        Answer.by(yard, "check").done();
        Path history = yard.resolve("history/tern.csv");
        assertEquals(6, Files.readAllLines(history).size(), "nothing is taken out");
        assertTrue(Files.readString(history).contains(",2026-11-25,AB,twice\n"));
        Files.writeString(
                history,
                "2026-11-20,main,leg,change-saildrive-oil,,,,,,,2026-11-25,AB,twice\n",
                java.nio.file.StandardOpenOption.APPEND);
        Answer.by(yard, "check").done().says("history/tern.csv:7: struck-on: no line above says the same");
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
    void readingsAreJudgedAndTheVerdictKept() throws IOException {
        Answer.by(yard, "record", "tern", "--work", "recomission", "--reading", "oil-pressure=55psi")
                .refused("Perhaps");
        Answer.by(
                        yard,
                        "record",
                        "tern",
                        "--work",
                        "inspect-underwater-anode",
                        "--part",
                        "main/leg-anode",
                        "--reading",
                        "anode-remaining=45",
                        "--day",
                        "2026-11-02")
                .done()
                .says("anode-remaining is act: 45 %, should be at least 50 %. Limit: service practice");
        assertTrue(Files.readString(yard.resolve("history/tern.csv"))
                .contains("anode-remaining=45 %,,\"anode-remaining=act 45 %, should be at least 50 %. Limit: "));
        Answer.by(yard, "due", "tern").done().says("it was found half gone or more");
    }

    @Test
    void aReadingIsBroughtToTheUnitItsLimitIsIn() throws IOException {
        Answer.by(yard, "record", "tern", "--work", "recommission", "--reading", "oil-pressure=55psi")
                .done()
                .says("oil-pressure is fine: 3.79212 bar");
        Answer.by(yard, "record", "tern", "--work", "recommission", "--reading", "oil-pressure=55 lb")
                .refused("oil-pressure is given in \"lb\"; expected bar, kPa, MPa, psi");
        Answer.by(yard, "record", "tern", "--work", "change-engine-oil", "--reading", "water-in-oil=no")
                .done()
                .says("water-in-oil is fine: no");
        Answer.by(yard, "record", "tern", "--work", "change-engine-oil", "--reading", "water-in-oil=3")
                .refused("yes or no");
        assertTrue(Files.readString(yard.resolve("history/tern.csv")).contains("oil-pressure=3.79212 bar"));
    }

    @Test
    void aYardThatWorksInPoundsAndFahrenheitTypesAndReadsThem() throws IOException {
        Path file = yard.resolve("yard.yaml");
        String metric = Files.readString(file);
        Files.writeString(file, metric + "units: {temperature: °F, volume: US gal, pressure: psi, clearance: thou}\n");
        Answer.by(yard, "record", "tern", "--work", "recommission", "--reading", "oil-pressure=55")
                .done()
                .says("oil-pressure is fine: 3.79212 bar");
        Answer.by(yard, "record", "tern", "--work", "recommission", "--reading", "oil-pressure=3.8bar")
                .done()
                .says("oil-pressure is fine: 3.8 bar");
        Answer.by(yard, "visits", "tern", "--months", "12", "--seconds", "1", "--no-alternatives")
                .done()
                .says("US gal engine oil");
        Answer.by(yard, "protect", "tern").done().says("°F");
        Files.writeString(file, metric + "units: {pressure: psy}\n");
        Answer.by(yard, "check").refused("units.pressure: found \"psy\"", "psi");
    }

    @Test
    void aVisitAsATableIsJudgedAndItsHoursReachTheMeter() throws IOException {
        Answer.by(yard, "hours", "tern", "main", "1000", "--day", "2025-05-01").done();
        Answer.by(yard, "hours", "tern", "main", "1010", "--new-meter", "0", "--day", "2025-06-01")
                .done();
        Path visit = folder.resolve("visit.csv");
        Files.writeString(visit, """
                date,installation,part,rule,hours,who,readings
                2026-11-02,main,engine,change-engine-oil,1050,AB,water-in-oil=yes
                2026-11-02,main,belts,inspect-belts,1050,AB,belt-deflection=10
                """);
        Answer.by(yard, "record", "tern", "--csv", visit.toString())
                .done()
                .says("water-in-oil is act: yes", "belt-deflection is fine: 10 mm", "2 Nov 2026  main  40 h\n");
        assertTrue(Files.readString(yard.resolve("hours/tern.csv")).endsWith("2026-11-02,main,40,,AB\n"));
        Files.writeString(
                visit,
                Files.readString(visit).replace("2026-11-02", "2026-11-03").replace("1050", "1020"));
        Answer.by(yard, "record", "tern", "--csv", visit.toString())
                .refused("visit.csv:2: hours: found 10 h for main, less than the 40 h read on 2026-11-02");
        Files.writeString(visit, Files.readString(visit).replace("1020", "900"));
        Answer.by(yard, "record", "tern", "--csv", visit.toString())
                .refused("visit.csv:2: hours: found 900 h, fewer than the 1010 h run when the meter was last replaced");
        assertEquals(4, Files.readAllLines(yard.resolve("hours/tern.csv")).size());
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

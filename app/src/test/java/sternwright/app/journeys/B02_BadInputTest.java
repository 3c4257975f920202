package sternwright.app.journeys;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What cannot be used is told with file, line and field; all of it together; nothing is written. */
class B02_BadInputTest {
    @TempDir
    Path folder;

    Path yard = Path.of("yard");
    Path boat = Path.of("boat");

    @BeforeEach
    void aYardWithOneBoat() {
        yard = folder.resolve("yard");
        boat = yard.resolve("boats/tern.yaml");
        Answer.by(folder, "new", "yard", yard.toString()).done();
        Answer.by(yard, "new", "boat", "--arrangement", "saildrive", "--id", "tern")
                .done();
    }

    @Test
    void brokenYaml() throws IOException {
        change(boat, "owner:", "owner: [");
        refused("boats/tern.yaml:", "broken YAML");
    }

    @Test
    void twoEnginesOfOneId() throws IOException {
        Answer.by(yard, "new", "boat", "--arrangement", "jet", "--twin", "--id", "twin")
                .done();
        change(yard.resolve("boats/twin.yaml"), "id: starboard", "id: port");
        Answer.by(yard, "check")
                .refused("boats/twin.yaml:", "installations[port]: \"port\" is given twice, first in line");
    }

    @Test
    void figuresThatCannotBe() throws IOException {
        change(boat, "kind: diaphragm-seal", "kind: diaphragm-seal, fitted-on: 2027-01-01, hours-at-fitting: -5");
        refused(
                "installations[main].parts[diaphragm-seal].fitted-on: 2027-01-01 lies in the future",
                "installations[main].parts[diaphragm-seal].hours-at-fitting: found -5; expected a number of at least 0");
    }

    @Test
    void namesThatLeadNowhere() throws IOException {
        change(boat, "berth: home", "berth: hom");
        change(boat, "use: weekends", "use: weekend\nprogramme: generik");
        change(boat, "kind: fuel-tank", "kind: fuel-tonk");
        change(boat, "metal: aluminium-casting", "metal: aluminum-casting");
        change(boat, "parent: diaphragm-seal", "parent: diaphragm");
        change(boat, "to: main/propeller", "to: main/propellor");
        refused(
                "berth: there is no berth in berths.yaml \"hom\". Perhaps \"home\" is meant",
                "use: there is no kind of use in yard.yaml \"weekend\". Perhaps \"weekends\" is meant",
                "programme: there is no programme \"generik\". Perhaps \"generic\" is meant",
                "parts[fuel-tank].kind: there is no kind of part in the catalogue \"fuel-tonk\". Perhaps \"fuel-tank\"",
                "parts[leg].metal: there is no metal \"aluminum-casting\". Perhaps \"aluminium-casting\" is meant",
                "parts[leak-sensor].parent: there is no part further up in this installation \"diaphragm\"",
                "bonds[2].to: there is no part of this boat \"main/propellor\". Perhaps \"main/propeller\" is meant",
                "7 problems");
    }

    @Test
    void aTariffThatDoesNotReach() throws IOException {
        change(boat, "length-m: 10", "length-m: 25");
        refused("hull.length-m: found 25.0 m is longer than the longest band of lifts", "Add a band to tariff.lifts");
        change(yard.resolve("yard.yaml"), "tariff:", "tarif:");
        refused("yard.yaml:", "tariff: missing", "tarif: unknown field", "Perhaps \"tariff\" is meant");
    }

    @Test
    void rulesOfTheYardThatCannotBe() throws IOException {
        Files.writeString(yard.resolve("programmes/own.yaml"), """
                id: own
                name: own rules
                overridings:
                  - {rule: change-engine-oil, months: 0}
                """);
        refused("programmes/own.yaml:4: overridings[1].months: found 0; expected a whole number of at least 1");
        Files.writeString(yard.resolve("programmes/own.yaml"), """
                id: own
                name: own rules
                overridings:
                  - {rule: change-engine-oyl, months: 6}
                """);
        refused("programmes/own.yaml:4: overridings[1].rule:", "change-engine-oyl", "is meant");
    }

    @Test
    void rulesOfTheYardThatLeadNowhere() throws IOException {
        Files.writeString(yard.resolve("programmes/own.yaml"), """
                id: own
                name: own rules
                rules:
                  - id: grease-rams
                    work: grease the rams
                    applies-to: {kinds: [ramz]}
                    interval:
                      months: 6
                      after: [renew-mountz]
                    minutes: 20
                    cautions: [hull-opening]
                """);
        refused(
                "programmes/own.yaml:6: rules[grease-rams].applies-to.kinds: \"ramz\"",
                "programmes/own.yaml:9: rules[grease-rams].interval.after: \"renew-mountz\"",
                "Perhaps \"renew-mounts\" is meant",
                "programmes/own.yaml:11: rules[grease-rams].cautions: \"hull-opening\"");
    }

    @Test
    void everythingOfAllFilesTogether() throws IOException {
        change(boat, "length-m: 10", "length-m: ten");
        change(yard.resolve("yard.yaml"), "currency: EUR", "currency: euro");
        change(yard.resolve("berths.yaml"), "latitude-deg: 50", "latitude-deg: 150");
        Files.writeString(yard.resolve("hours").resolve("tern.csv"), "date,installation,hours\n2026-01-01,main,-1\n");
        refused(
                "berths.yaml:",
                "berths[home].latitude-deg: found 150; expected a number from -90 to 90",
                "boats/tern.yaml:",
                "hull.length-m: found \"ten\"",
                "hours/tern.csv:2: hours: found -1",
                "yard.yaml:",
                "currency: found \"euro\"",
                "4 problems");
    }

    @Test
    void namesThatLeadNowhereAreToldBesideFieldsThatCannotBe() throws IOException {
        change(boat, "length-m: 10", "length-m: ten");
        change(boat, "berth: home", "berth: hom");
        change(boat, "kind: fuel-tank", "kind: fuel-tonk");
        refused(
                "hull.length-m: found \"ten\"",
                "berth: there is no berth in berths.yaml \"hom\"",
                "parts[fuel-tank].kind: there is no kind of part in the catalogue \"fuel-tonk\"",
                "3 problems");
    }

    @Test
    void whatAHullCannotBeAndWhatIsUnusual() throws IOException {
        Answer.by(yard, "new", "boat", "--arrangement", "pod", "--id", "heavy", "--mass", "55000")
                .refused("--mass: found 55000 kg is more than a boat of this length, beam and draught can float");
        Answer.by(yard, "new", "boat", "--arrangement", "pod", "--id", "light", "--mass", "550")
                .done()
                .says("Remark: 550 kg is unusual for 10.0 m of length; it is usually 1200 kg to 25000 kg", "no source");
        Answer.by(yard, "check").done().says("boats/light.yaml:", "hull.mass-kg: 550 kg is unusual", "1 remark above");
    }

    @Test
    void wordsTypedAreToldInWordsOfTheTrade() {
        Answer.by(yard, "new", "boat", "--arrangement", "jet", "--id", "x", "--length", "11m")
                .refused(
                        "--length: found \"11m\"; expected a number such as 11.5. Leave the unit out. --length is: Length overall, m.");
        Answer.by(yard, "new", "boat", "--arrangement", "jet", "--id", "x", "--length", "11,5")
                .refused("Write a decimal point");
        Answer.by(yard, "new", "boat", "--arrangement", "JET", "--id", "x", "--use", "cruisin")
                .refused("--use: there is no kind of use in yard.yaml \"cruisin\". Perhaps \"cruising\" is meant");
        Answer.by(yard, "new", "boat", "--arrangement", "sail-drive", "--id", "x")
                .refused("--arrangement: \"sail-drive\" is not known. Perhaps \"saildrive\" is meant");
        Answer.by(yard, "new", "boat", "--id", "x").refused("--arrangement is missing; it is: How power gets");
        Answer.by(yard, "due", "--state", "OVERDU").refused("Perhaps \"overdue\" is meant");
        Answer.by(yard, "due", "--state", "Overdue,DUE").done();
        Answer.by(yard, "due", "--stat", "due")
                .refused("--stat: \"sternwright due\" has no such option", "\"--state\"");
        Answer.by(yard, "due", "--date", "25.11.2026").refused("--date: found \"25.11.2026\"; expected a date as year");
        Answer.by(yard, "vists").refused("vists: there is no such command. Perhaps \"visits\" is meant");
        Answer.by(yard, "hours", "tern", "main", "4o").refused("HOURS: found \"4o\"; expected a number");
        Answer.by(yard, "hours", "tern").refused("INSTALLATION is missing; it is: Id of the installation");
        Answer.by(yard, "card", "tern", "--visit", "1.5").refused("--visit: found \"1.5\"; expected a whole number");
        Answer.by(yard, "record", "tern", "--work", "chnge-oil").refused("\"change-engine-oil\"");
        Answer.by(yard, "record", "tern", "--work", "impeller").refused("\"renew-impeller\"");
    }

    private void refused(String... phrases) throws IOException {
        Map<String, String> before = files();
        Answer check = Answer.by(yard, "check").refused(phrases);
        assertFalse(check.err().contains("nothing was written"), "it only reads");
        Answer.by(yard, "record", "tern", "--work", "change-engine-oil", "--part", "main/engine")
                .refused(phrases)
                .refused("nothing was written");
        assertEquals(before, files(), "nothing was written");
    }

    private Map<String, String> files() throws IOException {
        Map<String, String> texts = new TreeMap<>();
        try (Stream<Path> all = Files.walk(yard)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                if (!file.endsWith(".lock")) {
                    texts.put(file.toString(), Files.readString(file));
                }
            }
        }
        return texts;
    }

    private static void change(Path file, String from, String to) throws IOException {
        String text = Files.readString(file);
        if (!text.contains(from)) {
            throw new IllegalStateException("\"" + from + "\" is not in " + file + ":\n" + text);
        }
        Files.writeString(file, text.replaceFirst(java.util.regex.Pattern.quote(from), to));
    }
}

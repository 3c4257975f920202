package sternwright.app.journeys;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** From a boat's file to what protects her metal, and from readings to what is wrong, through the real program. */
class B01_MetalUnderWaterTest {
    @TempDir
    Path folder;

    private Told told = new Told("2026-04-01");

    @BeforeEach
    void writeYard() {
        told = new Told("2026-04-01");
        assertEquals(0, told.run("new", "yard", folder.resolve("yard").toString()));
        assertEquals(
                0, run("new", "boat", "--arrangement", "saildrive", "--id", "grey-plover", "--name", "Grey Plover"));
    }

    private int run(String... args) {
        return told.run(folder.resolve("yard"), args);
    }

    private JsonNode json() {
        return JsonMapper.shared().readTree(told.out());
    }

    @Test
    void everyPartIsJudgedAndEveryAnodeHasItsDate() {
        assertEquals(0, run("protect", "grey-plover"), told::all);
        assertTrue(told.out().contains("main/leg"), told::all);
        assertTrue(told.out().contains("half gone"));
        assertTrue(told.out().contains("People in the water"));
        assertEquals(0, run("protect", "grey-plover", "--json"), told::all);
        assertEquals("Ag/AgCl/sw", json().get("electrode").asString());
        assertTrue(json().get("parts").size() >= 3);
        assertFalse(json().get("anodes").get(0).get("half-gone").isNull());
        assertTrue(json().get("assumptions").size() > 3);
    }

    @Test
    void readingsAreDiagnosedAndTheNextMeasurementNamed() {
        assertEquals(
                0,
                run(
                        "protect",
                        "grey-plover",
                        "--unplugged",
                        "--electrode",
                        "Ag/AgCl/sw",
                        "--reading",
                        "main/leg=-715mV",
                        "--reading",
                        "main/leg-anode=-1.098V",
                        "--json"),
                told::all);
        JsonNode diagnosis = json().get("diagnosis");
        assertTrue(diagnosis.get("summary").asString().contains("anode not connected"), told::all);
        assertTrue(diagnosis.get("next").size() > 0);
    }

    @Test
    void aReadingWithoutItsElectrodeOrInTheWrongUnitIsSaid() {
        assertEquals(2, run("protect", "grey-plover", "--reading", "main/leg=-0.97V"));
        assertTrue(told.err().contains("names no reference electrode"), told::all);
        assertEquals(2, run("protect", "grey-plover", "--electrode", "Zn", "--reading", "main/leg=-970V"));
        assertTrue(told.err().contains("was it -970 mV?"), told::all);
        assertEquals(2, run("protect", "grey-plover", "--electrode", "lead"));
        assertEquals(2, run("protect", "grey-plover", "--electrode", "Zn", "--reading", "main/rudder=0.2V"));
        assertTrue(told.err().contains("main/rudder"), told::all);
        assertEquals(2, run("protect", "grey-plover", "--set", "main/leg.area-m=2"));
        assertTrue(told.err().contains("did you mean \"main/leg.area-m2\""), told::all);
    }

    private void noWater() throws IOException {
        Path berths = folder.resolve("yard/berths.yaml");
        Files.writeString(berths, Files.readString(berths).replaceAll("(?s)    water:.*?(?=    # first night)", ""));
    }

    /** Refused with words, and nothing written. */
    private void refused(String words, String... options) {
        Path page = folder.resolve("refused.html");
        Path pdf = folder.resolve("refused.pdf");
        String[] args = new String[options.length + 6];
        String[] first = {"protect", "grey-plover", "--html", page.toString(), "--pdf", pdf.toString()};
        System.arraycopy(first, 0, args, 0, 6);
        System.arraycopy(options, 0, args, 6, options.length);
        assertEquals(2, run(args), told::all);
        assertTrue(told.err().contains(words), told::all);
        assertFalse(told.err().contains("Exception"), told::all);
        assertFalse(Files.exists(page) || Files.exists(pdf));
    }

    @Test
    void aBerthWithoutWaterIsSaidAndNothingIsWritten() throws IOException {
        noWater();
        refused("neither salinity nor resistivity");
        assertTrue(told.err().contains("berths.yaml"), told::all);
    }

    @Test
    void allThatIsWrongIsSaidInOneGo() throws IOException {
        noWater();
        refused(
                "neither salinity nor resistivity",
                "--electrode",
                "Zn",
                "--reading",
                "main/ruder=0.2V",
                "--reading",
                "main/leg=-970V",
                "--set",
                "main/leg.area-m2=-1");
        assertTrue(told.err().contains("--reading main/ruder=0.2V"), told::all);
        assertTrue(told.err().contains("a part in the water or an engine"), told::all);
        assertTrue(told.err().contains("was it -970 mV?"), told::all);
        assertTrue(told.err().contains("--set main/leg.area-m2"), told::all);
        assertFalse(told.err().contains("boats/grey-plover.yaml"), told::all);
    }

    @Test
    void noMetalNegativeAreaAndUnknownAlloyAreSaid() throws IOException {
        Path boat = folder.resolve("yard/boats/grey-plover.yaml");
        String sound = Files.readString(boat);
        Files.writeString(boat, sound.replace("metal: aluminium-casting", "metal: unobtainium"));
        refused("unobtainium");
        Files.writeString(boat, sound.replaceFirst("wetted-area-m2: [0-9.]+", "wetted-area-m2: -0.4"));
        refused("-0.4");
        Files.writeString(
                boat,
                sound.replaceAll("kind: (leg-anode|leg|folding-propeller|propeller|seacock|engine)\\b", "kind: belts"));
        refused("no metal in the water");
    }

    @Test
    void aReadingInVoltsThatShouldBeMillivoltsAndAnElectrodeNotNamedAreSaid() {
        refused("was it -970 mV?", "--electrode", "Ag/AgCl/sw", "--reading", "main/leg=-970V");
        refused("names no reference electrode", "--reading", "main/leg=-0.97V");
        refused("no unit is given", "--electrode", "Zn", "--reading", "main/leg=-970");
        refused("Perhaps \"main/leg-anode\" is meant", "--electrode", "Zn", "--reading", "main/leg-anod=20mV");
    }

    @Test
    void theWantedIntervalIsAnsweredForAWornAnodeToo() throws IOException {
        Files.writeString(folder.resolve("yard/history/grey-plover.csv"), """
                date,installation,part,rule,outcome,hours,who,readings,note
                2025-04-10,main,leg-anode,renew-leg-anode,done,,somebody,,
                2026-03-20,main,leg-anode,inspect-underwater-anode,done,,somebody,anode-remaining=30 %,
                """);
        assertEquals(0, run("protect", "grey-plover", "--last-years", "2", "--json"), told::all);
        JsonNode two = json().get("anodes").get(0);
        assertEquals("2026-04-01", two.get("half-gone").asString());
        double lasts = two.get("new-lasts-months").asDouble();
        assertEquals(
                two.get("mass-kg").asDouble() * 24 / lasts,
                two.get("mass-wanted-kg").asDouble(),
                1e-6);
        assertTrue(json().get("advice").get(0).get("act").asString().contains("Renew now"), told::all);
    }

    @Test
    void theReportIsWrittenAsPageAndPdf() throws IOException {
        Path page = folder.resolve("report.html");
        Path pdf = folder.resolve("report.pdf");
        assertEquals(0, run("protect", "grey-plover", "--html", page.toString(), "--pdf", pdf.toString()), told::all);
        String html = Files.readString(page);
        assertTrue(html.contains("class=\"scale ") && html.contains("class=\"anode\""));
        assertTrue(html.contains("For the owner"));
        assertTrue(
                html.contains("narrow-only") && html.contains("wide-only"), "one drawing for a sheet, one for a phone");
        byte[] start = Files.readAllBytes(pdf);
        assertEquals("%PDF-", new String(start, 0, 5, StandardCharsets.US_ASCII));
    }

    @Test
    void weighedWastageMovesTheRenewalAndSaysSo() throws IOException {
        assertEquals(0, run("due", "grey-plover", "--within", "60"), told::all);
        assertTrue(told.out().contains("predicted from the boat's metals"), told::all);
        assertTrue(told.out().contains("a new one then lasts about"), told::all);
        Files.writeString(folder.resolve("yard/history/grey-plover.csv"), """
                date,installation,part,rule,outcome,hours,who,readings,note
                2025-04-10,main,leg-anode,renew-leg-anode,done,,somebody,,
                2025-09-20,main,leg-anode,inspect-underwater-anode,done,,somebody,anode-remaining=70 %,
                """);
        int status = run("due", "grey-plover", "--within", "60");
        assertEquals(0, status, told::all);
        assertTrue(told.out().contains("measured: by 1 weighing of its own anodes"), told::all);
    }

    @Test
    void aCircuitFileIsSolvedOrRefusedWithEveryReason() throws IOException {
        Path file = folder.resolve("couple.json");
        String couple = """
                {"schema": "protection-case-1", "name": "couple", "bodies": [
                 {"id": "a", "material": "x", "areaM2": 0.001, "bareFraction": 1, "resistanceToRemoteEarthOhm": 0, "reactions":
                  [{"kind": "anodic", "e0V": -0.7, "i0APerM2": 0.01, "slopeVPerDecade": 0.06, "limitAPerM2": null}]},
                 {"id": "c", "material": "y", "areaM2": 0.005, "bareFraction": 1, "resistanceToRemoteEarthOhm": 0, "reactions":
                  [{"kind": "cathodic", "e0V": -0.2, "i0APerM2": 0.001, "slopeVPerDecade": 0.12, "limitAPerM2": null}]}],
                 "links": [{"id": "join", "kind": "resistor", "a": "a", "b": "c", "ohm": 1e-6}], "sources": []}
                """;
        Files.writeString(file, couple);
        assertEquals(0, told.run("circuit", file.toString(), "--json"), told::all);
        assertEquals(-0.54537453, json().get("metalPotentialV").get("c").asDouble(), 1e-7);
        assertEquals(-0.00377651, json().get("linkCurrentA").get("join").asDouble(), 1e-8);
        assertEquals(0, told.run("circuit", file.toString()), told::all);
        assertTrue(told.out().contains("-0.545375"), told::all);
        Files.writeString(
                file, couple.replace("\"areaM2\": 0.001", "\"areaM2\": -1").replace("\"ohm\": 1e-6", "\"ohm\": -2"));
        assertEquals(2, told.run("circuit", file.toString()));
        assertTrue(told.err().contains("area is -1.0") && told.err().contains("resistance is -2.0"), told::all);
        Files.writeString(file, couple.replace("\"areaM2\": 0.001", "\"areaM2\": \"big\""));
        assertEquals(2, told.run("circuit", file.toString()));
        assertTrue(told.err().contains("bodies[a].areaM2"), told::all);
        Files.writeString(file, "{");
        assertEquals(2, told.run("circuit", file.toString()));
        assertEquals(2, told.run("circuit", folder.resolve("none.json").toString()));
        assertTrue(told.err().contains("no such file"), told::all);
    }
}

package sternwright.app.journeys;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A newcomer makes a yard, registers a boat and sees what is due. */
class B01_NewYardToDueListTest {
    @TempDir
    Path folder;

    Path yard = Path.of("yard");

    @BeforeEach
    void aNewYard() {
        yard = folder.resolve("yard");
        Answer.by(folder, "new", "yard", yard.toString(), "--name", "Invented yard")
                .done()
                .says("yard.yaml");
    }

    @Test
    void fromNothingToADueList() {
        Answer.by(yard, "new", "boat", "--arrangement", "saildrive", "--name", "Little Tern")
                .done()
                .says("little-tern.yaml");
        Answer.by(yard, "boats").done().says("little-tern", "main saildrive", "1 boat.");
        Answer.by(yard, "check").done().says("Every reference leads somewhere");
        Answer.by(yard, "due", "little-tern").done().says("main/leg", "diaphragm");
        Answer.by(yard, "due", "little-tern", "--json").done().says("\"due-on\"", "\"boat\" : \"little-tern\"");
    }

    @ParameterizedTest
    @CsvSource({
        "shaft,fresh-water", "shaft,raw-water", "shaft,keel", "saildrive,fresh-water", "saildrive,raw-water",
        "sterndrive,fresh-water", "sterndrive,raw-water", "pod,fresh-water", "jet,fresh-water", "jet,raw-water"
    })
    void everyTemplateIsWholeAndRight(String arrangement, String cooling) throws IOException {
        Answer.by(yard, "new", "boat", "--arrangement", arrangement, "--cooling", cooling, "--twin", "--id", "b")
                .done();
        Answer.by(yard, "check").done();
        String text = Files.readString(yard.resolve("boats/b.yaml"));
        assertTrue(text.contains("# assumed"), "guesses are marked");
        assertTrue(text.contains("port/") && text.contains("starboard/"), "bonds of both sides");
        Answer.by(yard, "due", "b").done().says("port/engine", "starboard/engine", "change engine oil and filter");
    }

    @Test
    void nothingIsEverWrittenOver() throws IOException {
        Answer.by(yard, "new", "boat", "--arrangement", "jet", "--id", "b").done();
        String before = Files.readString(yard.resolve("boats/b.yaml"));
        Answer.by(yard, "new", "boat", "--arrangement", "pod", "--id", "b").refused("this boat is there already");
        assertEquals(before, Files.readString(yard.resolve("boats/b.yaml")));
        Answer.by(folder, "new", "yard", yard.toString()).refused("there is something already");
    }

    @Test
    void slipsOfThePenAreAnsweredWithTheNearestName() {
        Answer.by(yard, "bots").refused("boats");
        Answer.by(yard, "new", "boat", "--arrangement", "saildrve", "--id", "b")
                .refused("Perhaps \"saildrive\" is meant");
        Answer.by(yard, "new", "boat", "--arrangement", "jet", "--id", "b", "--berth", "hme")
                .refused(
                        "there is no berth in berths.yaml \"hme\"", "Perhaps \"home\" is meant", "nothing was written");
        Answer.by(yard, "due", "heron").refused("there is no boat of this id");
        Answer.by(folder.resolve("none"), "boats").refused("there is no such folder", "new yard");
        Answer.by(folder, "boats").refused("this folder is not a yard");
        Answer.by(yard).refused("A command is missing");
    }
}

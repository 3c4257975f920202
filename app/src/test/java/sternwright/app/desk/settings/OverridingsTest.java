package sternwright.app.desk.settings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sternwright.app.demo.InventedFolder;
import sternwright.app.desk.InventedDesk;
import sternwright.app.files.YardFiles;
import sternwright.app.files.YardFolder;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.shelf.EditConflict;
import sternwright.app.files.shelf.FolderShelf;
import sternwright.finding.Source;
import sternwright.finding.Standing;
import sternwright.service.IntervalClause;
import sternwright.service.Overriding;
import sternwright.service.Scope;

/** A figure goes to the file where it leads, is proved before it is written, and leaves the file as it was when it is taken back. */
class OverridingsTest {
    private static final Source OWN = new Source("our own rule", "", Standing.YARD);
    private static final String OIL = "change-engine-oil";

    @TempDir
    Path folder;

    private FolderShelf shelf = new FolderShelf(Path.of("."));

    @BeforeEach
    void aYard() throws IOException {
        Path yard = folder.resolve("yard");
        new InventedFolder(InventedFolder.Where.NORTH).write(yard, 3, InventedDesk.TODAY, 5);
        shelf = new FolderShelf(yard);
        for (String name : shelf.names("programmes")) {
            Files.delete(yard.resolve(name));
        }
    }

    private void write(String name, String text) throws IOException {
        Files.createDirectories(shelf.root().resolve("programmes"));
        Files.writeString(shelf.root().resolve(name), text);
    }

    private static Overriding months(Scope scope, String target, @Nullable Integer months, Set<IntervalClause> drop) {
        return new Overriding(OIL, scope, target, months, null, null, null, drop, null, null, null, true, OWN);
    }

    private Overridings all() throws IOException {
        return Overridings.of(shelf, InventedDesk.TODAY);
    }

    private YardFiles yard() {
        return YardFolder.all(shelf, InventedDesk.TODAY);
    }

    private void put(Overriding o) throws IOException {
        Overridings.write(shelf, yard(), all().put(o), null, InventedDesk.TODAY);
    }

    @Test
    void theFirstFigureMakesAFileOfItsOwn() throws IOException {
        put(months(Scope.YARD, "", 10, Set.of()));
        assertEquals(List.of("programmes/own.yaml"), shelf.names("programmes"));
        put(months(Scope.YARD, "", 9, Set.of()));
        assertEquals(1, all().all().size(), "one figure for the same rule and reach");
        assertEquals(9, all().all().get(0).overriding().months());
        String boat = yard().boats().keySet().iterator().next();
        String before = Files.readString(shelf.root().resolve("programmes/own.yaml"));
        put(months(Scope.BOAT, boat, 6, Set.of(IntervalClause.HOURS)));
        Overridings.Key key = new Overridings.Key(OIL, Scope.BOAT, boat);
        Overridings.write(shelf, yard(), all().takeBack(key), null, InventedDesk.TODAY);
        assertEquals(before, Files.readString(shelf.root().resolve("programmes/own.yaml")), "letter by letter");
        assertThrows(BadInput.class, () -> all().takeBack(key));
    }

    @Test
    void aFigureIsChangedInTheFileInWhichItLeads() throws IOException {
        write(
                "programmes/charter.yaml",
                "id: charter\nname: C\nonly-if-named: true\noverridings:\n  - {rule: " + OIL + ", months: 4}\n");
        write(
                "programmes/makers.yaml",
                "id: makers\nname: M\noverridings:\n  - {rule: " + OIL
                        + ", scope: engine-model, target: K-40, hours: 250} # page 7\n");
        Overridings.Change model = all().put(months(Scope.ENGINE_MODEL, "k-40 ", 11, Set.of()));
        assertEquals("programmes/makers.yaml", model.file(), "letter case of a plate does not matter");
        assertTrue(model.text().contains("# page 7"), model.text());
        Overridings.Change wholeYard = all().put(months(Scope.YARD, "", 10, Set.of()));
        assertTrue(all().leading(new Overridings.Key(OIL, Scope.YARD, "")).isEmpty(), "charter's is for charter boats");
        assertEquals(
                "programmes/makers.yaml", wholeYard.file(), "what is for every boat stands where every boat reads it");
    }

    private static String said(BadInput bad) {
        return String.valueOf(bad.getMessage());
    }

    @Test
    void whatCannotBeIsRefusedAndNothingIsWritten() throws IOException {
        String boat = yard().boats().keySet().iterator().next();
        BadInput nowhere = assertThrows(BadInput.class, () -> put(months(Scope.BOAT, boat + "x", 6, Set.of())));
        assertTrue(said(nowhere).contains("there is no boat of this name"), said(nowhere));
        BadInput both =
                assertThrows(BadInput.class, () -> put(months(Scope.YARD, "", 6, Set.of(IntervalClause.MONTHS))));
        assertTrue(said(both).contains("given and dropped at once"), said(both));
        BadInput least = assertThrows(BadInput.class, () -> put(months(Scope.YARD, "", 0, Set.of())));
        assertTrue(least.problems().get(0).field().endsWith("months"), said(least));
        assertEquals(List.of(), shelf.names("programmes"));
        put(months(Scope.YARD, "", 10, Set.of()));
        Overridings.Change change = all().put(months(Scope.YARD, "", 9, Set.of()));
        assertThrows(
                EditConflict.class,
                () -> Overridings.write(shelf, yard(), change, "an old version", InventedDesk.TODAY));
    }
}

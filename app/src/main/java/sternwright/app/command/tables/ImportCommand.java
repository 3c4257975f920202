package sternwright.app.command.tables;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import sternwright.app.command.entry.Deed;
import sternwright.app.command.entry.ExitStatus;
import sternwright.app.command.text.Counted;
import sternwright.app.desk.keeping.MoveYard;
import sternwright.app.desk.keeping.YardPlace;
import sternwright.app.desk.tables.ImportBoats;
import sternwright.app.desk.tables.ImportTable;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.sheet.BoatsSheet;
import sternwright.app.files.sheet.HistorySheet;
import sternwright.app.files.sheet.HoursSheet;
import sternwright.app.files.sheet.TableFile;
import sternwright.app.files.shelf.Shelf;
import sternwright.app.store.Store;

/** Tables from a spreadsheet into the yard. */
@Command(
        name = "import",
        description = {
            "Take in a table kept in a spreadsheet: all of it, or nothing if any row is wrong.",
            "Or take a yard's folder into a store (.desk/yard.db); the yard is kept there from then on."
        },
        sortOptions = false)
public final class ImportCommand extends Deed {
    @Parameters(index = "0", paramLabel = "WHAT", description = "boats, hours, history or folder.")
    @Nullable
    Table what;

    @Parameters(
            index = "1",
            paramLabel = "FILE",
            arity = "0..1",
            description =
                    "CSV with a header; columns in docs/file-formats.md. For folder: a yard's folder to take into the store; left out: the yard's own.")
    @Nullable
    Path file;

    @Option(names = "--update", description = "boats: change boats that are there; comments in their files are lost.")
    boolean update;

    @Option(names = "--replace", description = "folder: put it in place of the yard that the store holds.")
    boolean replace;

    @Option(names = "--as-read", description = "hours, history: keep meter readings although they are out of line.")
    boolean asRead;

    @Override
    public boolean writes() {
        return true;
    }

    @Override
    public Integer call() throws IOException {
        Table kind = Objects.requireNonNull(what);
        if (kind == Table.FOLDER) {
            return folder();
        }
        if (file == null) {
            throw BadInput.of("import", "the file is not named", "a CSV table: " + header(kind), "");
        }
        TableFile table = TableFile.of(file, header(kind));
        Shelf yard = program().shelf();
        switch (kind) {
            case BOATS -> {
                ImportBoats.Imported in =
                        ImportBoats.take(yard, table, update, program().clock());
                out().println(Counted.of(in.added(), "boat") + " added, " + in.changed() + " changed, " + in.same()
                        + " there already that " + (in.same() == 1 ? "says" : "say") + " the same.");
            }
            case HOURS -> say(ImportTable.hours(yard, table, program().clock(), asRead), false);
            case HISTORY, FOLDER ->
                say(ImportTable.history(yard, table, program().clock(), asRead), true);
        }
        return ExitStatus.DONE;
    }

    private Integer folder() throws IOException {
        Path from = file == null ? program().yard() : file;
        try (YardPlace place =
                YardPlace.withStore(program().yard(), System.getenv(), java.time.Clock.systemDefaultZone())) {
            Store store = place.store().orElseThrow();
            MoveYard moved = MoveYard.in(
                    from, store, replace, program().person(), program().clock());
            out().println(Counted.of(moved.texts(), "text") + " and " + Counted.of(moved.documents(), "document")
                    + " taken into " + store.place() + ". The yard is kept there from now on.");
            moved.leftOut().forEach(n -> err().println("Left out, no text of a yard: " + n));
        }
        return ExitStatus.DONE;
    }

    private static String header(Table kind) {
        return switch (kind) {
            case BOATS -> BoatsSheet.SHEET.header();
            case HOURS -> HoursSheet.MANY_BOATS.header();
            case HISTORY, FOLDER -> HistorySheet.MANY_BOATS.header();
        };
    }

    private void say(ImportTable.Imported in, boolean history) {
        out().println(Counted.of(in.added(), "line") + " added to " + Counted.of(in.boats(), "boat") + "; " + in.known()
                + (in.known() == 1 ? " was" : " were") + " there already.");
        if (history) {
            out().println("Their hours gave " + Counted.of(in.meter(), "new meter reading") + ".");
        }
    }
}

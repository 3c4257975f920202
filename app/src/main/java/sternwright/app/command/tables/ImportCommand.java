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
import sternwright.app.desk.tables.ImportBoats;
import sternwright.app.desk.tables.ImportTable;
import sternwright.app.files.sheet.BoatsSheet;
import sternwright.app.files.sheet.HistorySheet;
import sternwright.app.files.sheet.HoursSheet;
import sternwright.app.files.sheet.TableFile;
import sternwright.app.files.shelf.Shelf;

/** Tables from a spreadsheet into the yard. */
@Command(
        name = "import",
        description = "Take in a table kept in a spreadsheet: all of it, or nothing if any row is wrong.",
        sortOptions = false)
public final class ImportCommand extends Deed {
    @Parameters(index = "0", paramLabel = "WHAT", description = "boats, hours or history.")
    @Nullable
    Table what;

    @Parameters(index = "1", paramLabel = "FILE", description = "CSV with a header; columns in docs/file-formats.md.")
    @Nullable
    Path file;

    @Option(names = "--update", description = "boats: change boats that are there; comments in their files are lost.")
    boolean update;

    @Option(names = "--as-read", description = "hours, history: keep meter readings although they are out of line.")
    boolean asRead;

    @Override
    public boolean writes() {
        return true;
    }

    @Override
    public Integer call() throws IOException {
        Table kind = Objects.requireNonNull(what);
        TableFile table = TableFile.of(Objects.requireNonNull(file), header(kind));
        Shelf yard = program().shelf();
        switch (kind) {
            case BOATS -> {
                ImportBoats.Imported in =
                        ImportBoats.take(yard, table, update, program().clock());
                out().println(Counted.of(in.added(), "boat") + " added, " + in.changed() + " changed, " + in.same()
                        + " there already that " + (in.same() == 1 ? "says" : "say") + " the same.");
            }
            case HOURS -> say(ImportTable.hours(yard, table, program().clock(), asRead), false);
            case HISTORY -> say(ImportTable.history(yard, table, program().clock(), asRead), true);
        }
        return ExitStatus.DONE;
    }

    private static String header(Table kind) {
        return switch (kind) {
            case BOATS -> BoatsSheet.SHEET.header();
            case HOURS -> HoursSheet.MANY_BOATS.header();
            case HISTORY -> HistorySheet.MANY_BOATS.header();
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

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
import sternwright.app.desk.tables.ImportBoats;
import sternwright.app.desk.tables.ImportTable;

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

    @Override
    public Integer call() throws IOException {
        Path table = Objects.requireNonNull(file);
        switch (Objects.requireNonNull(what)) {
            case BOATS -> {
                ImportBoats.Imported in = ImportBoats.take(
                        program().yard(), table, update, program().clock());
                out().println(in.added() + " boats added, " + in.changed() + " changed, " + in.same()
                        + " were there already and say the same.");
            }
            case HOURS ->
                say(ImportTable.hours(program().yard(), table, program().clock()));
            case HISTORY ->
                say(ImportTable.history(program().yard(), table, program().clock()));
        }
        return ExitStatus.DONE;
    }

    private void say(ImportTable.Imported in) {
        out().println(in.added() + " lines added to " + in.boats() + " boats; " + in.known() + " were there already.");
    }
}

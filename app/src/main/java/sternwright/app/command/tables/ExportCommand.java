package sternwright.app.command.tables;

import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
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
import sternwright.app.desk.tables.ExportTable;
import sternwright.app.files.YardFiles;
import sternwright.app.files.YardFolder;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.safe.SafeFile;

/** Tables from the yard for a spreadsheet. */
@Command(
        name = "export",
        description = "Write the register, the hours or the history as one table, or the whole yard as a folder.",
        sortOptions = false)
public final class ExportCommand extends Deed {
    @Parameters(index = "0", paramLabel = "WHAT", description = "boats, hours, history or folder.")
    @Nullable
    Table what;

    @Parameters(index = "1", arity = "0..1", paramLabel = "FILE", description = "Left out: to the screen.")
    @Nullable
    Path file;

    @Option(names = "--over", description = "Write over a file that is there.")
    boolean over;

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
        YardFiles files = YardFolder.all(program().shelf(), program().latest());
        String table = switch (kind) {
            case BOATS -> ExportTable.boats(files);
            case HOURS -> ExportTable.hours(files);
            case HISTORY, FOLDER -> history(files);
        };
        if (file == null) {
            out().print(table);
            return ExitStatus.DONE;
        }
        if (Files.exists(file) && !over) {
            throw BadInput.of(file.toString(), "there is a file already", "", "Say --over to write over it.");
        }
        SafeFile.write(file, table);
        out().println("Wrote " + Counted.of(table.lines().count() - 1, "row") + " to " + file + ".");
        return ExitStatus.DONE;
    }

    private static String history(YardFiles files) throws IOException {
        StringWriter text = new StringWriter();
        ExportTable.history(files, text);
        return text.toString();
    }

    private Integer folder() throws IOException {
        if (file == null) {
            throw BadInput.of("export folder", "the folder is not named", "a folder that is missing or empty", "");
        }
        MoveYard moved = MoveYard.out(program().place(), file);
        out().println("Wrote " + Counted.of(moved.texts(), "text") + " and " + Counted.of(moved.documents(), "document")
                + " to " + file + ".");
        return ExitStatus.DONE;
    }
}

package sternwright.app.command.keeping;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import sternwright.app.command.entry.Deed;
import sternwright.app.command.entry.ExitStatus;
import sternwright.app.desk.keeping.Backup;
import sternwright.app.desk.register.CheckYard;
import sternwright.app.files.YardFiles;
import sternwright.app.store.Store;

/** Whether a store or a backup is whole. */
@Command(
        name = "verify",
        description = {
            "Look whether the yard's store, or a backup, is whole: the database itself, the hash of every change and",
            "document, and whether the yard in it can be read."
        },
        sortOptions = false)
public final class VerifyCommand extends Deed {
    @Parameters(paramLabel = "FILE", arity = "0..1", description = "A backup; left out: the yard itself.")
    @Nullable
    Path file;

    @Override
    public Integer call() throws IOException {
        if (file != null) {
            out().println(file + ": "
                    + BackupCommand.what(new Backup(Clock.systemDefaultZone())
                            .verify(file, program().latest()))
                    + ".");
            return ExitStatus.DONE;
        }
        Store store = program().place().store().orElse(null);
        if (store == null) {
            YardFiles files = CheckYard.check(program().shelf(), program().latest());
            out().println("The yard is kept in its folder, which has no hashes; all files of its "
                    + files.boats().size() + " boats can be read.");
        } else {
            out().println(store.place() + ": "
                    + BackupCommand.what(Backup.verify(store, program().latest())) + ".");
        }
        return ExitStatus.DONE;
    }
}

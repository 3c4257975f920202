package sternwright.app.command.keeping;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import sternwright.app.command.entry.Deed;
import sternwright.app.command.entry.ExitStatus;
import sternwright.app.desk.keeping.Backup;
import sternwright.app.desk.keeping.YardPlace;
import sternwright.app.store.StoreAddress;
import sternwright.app.store.Verification;

/** A yard out of one file. */
@Command(
        name = "restore",
        description = {
            "Bring back a yard from a file that \"sternwright backup\" wrote. Close the pages first.",
            "The file is verified first; what is there now is moved aside, never removed."
        },
        sortOptions = false)
public final class RestoreCommand extends Deed {
    @Parameters(paramLabel = "FILE", description = "The backup.")
    @Nullable
    Path file;

    @Override
    public Integer call() throws IOException {
        Path folder = program().yard();
        StoreAddress named = YardPlace.named(folder, System.getenv()).orElse(null);
        Verification found = new Backup(Clock.systemDefaultZone())
                .restore(Objects.requireNonNull(file), folder, named, program().latest());
        out().println("Restored " + BackupCommand.what(found) + ". The yard is kept in "
                + (named == null ? YardPlace.storeFile(folder) : named.place()) + ".");
        return ExitStatus.DONE;
    }
}

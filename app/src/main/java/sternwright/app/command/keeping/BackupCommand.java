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
import sternwright.app.command.text.Counted;
import sternwright.app.desk.keeping.Backup;
import sternwright.app.store.Verification;

/** A yard into one file. */
@Command(
        name = "backup",
        description = {
            "Write the yard with its history, documents and accounts into one file; people may work meanwhile.",
            "The file is verified before it is there."
        },
        sortOptions = false)
public final class BackupCommand extends Deed {
    @Parameters(paramLabel = "FILE", description = "A new file, such as yard-2026-10-01.backup.")
    @Nullable
    Path file;

    @Override
    public Integer call() throws IOException {
        Verification found = new Backup(Clock.systemDefaultZone())
                .write(
                        program().place(),
                        Objects.requireNonNull(file),
                        program().latest());
        out().println("Wrote " + file + ": " + what(found) + ".");
        return ExitStatus.DONE;
    }

    /** What was verified, counted. */
    static String what(Verification found) {
        return Counted.of(found.texts(), "text") + " with " + Counted.of((int) found.changes(), "change") + ", "
                + Counted.of(found.attachments(), "document") + ", every hash right";
    }
}

package sternwright.app.command.register;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Currency;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import sternwright.app.command.entry.Deed;
import sternwright.app.command.entry.ExitStatus;
import sternwright.app.desk.register.NewYard;
import sternwright.app.files.problem.BadInput;

/** A new yard. */
@Command(
        name = "yard",
        description = "Write a yard's folder to start from, with comments and invented example prices.",
        sortOptions = false)
public final class NewYardCommand extends Deed {
    @Parameters(paramLabel = "FOLDER", description = "A folder that is not there yet, or empty.")
    @Nullable
    Path folder;

    @Option(names = "--name", defaultValue = "My yard", description = "As on the letterhead.")
    String name = "";

    @Option(names = "--currency", defaultValue = "EUR", description = "Three letters; left out: EUR.")
    String currency = "";

    @Option(
            names = "--latitude",
            paramLabel = "DEG",
            defaultValue = "50",
            description = "Of the first berth, north positive; its sign tells the hemisphere.")
    double latitude;

    @Override
    public boolean writes() {
        return true;
    }

    @Override
    public Integer call() throws IOException {
        if (!(Math.abs(latitude) <= 90)) {
            throw BadInput.of("--latitude", "found " + latitude, "-90 to 90", "North is positive.");
        }
        Path made = Objects.requireNonNull(folder);
        NewYard.make(made, name, money(), latitude);
        out().println("Wrote yard.yaml, berths.yaml and resources.yaml in " + made + ".");
        out().println("Put your own prices and berths in, then register a boat:");
        out().println("  sternwright --yard " + made + " new boat --arrangement saildrive --name \"Her Name\"");
        return ExitStatus.DONE;
    }

    private Currency money() {
        try {
            return Currency.getInstance(currency);
        } catch (IllegalArgumentException unknown) {
            throw BadInput.of("--currency", "found \"" + currency + "\"", "a currency of ISO 4217", "Such as EUR.");
        }
    }
}

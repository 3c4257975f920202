package sternwright.app.command;

import picocli.CommandLine.Command;
import picocli.CommandLine.ParameterException;

/** Starts a yard or a boat. */
@Command(
        name = "new",
        description = "Start a new yard, or register a new boat.",
        subcommands = {NewYardCommand.class, NewBoatCommand.class})
final class NewCommand extends Deed {
    @Override
    public Integer call() {
        throw new ParameterException(
                java.util.Objects.requireNonNull(spec).commandLine(), "Say what: new yard, or new boat.");
    }
}

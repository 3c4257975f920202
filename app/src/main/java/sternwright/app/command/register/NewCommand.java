package sternwright.app.command.register;

import picocli.CommandLine.Command;
import picocli.CommandLine.ParameterException;
import sternwright.app.command.entry.Deed;

/** Starts a yard or a boat. */
@Command(
        name = "new",
        description = "Start a new yard, or register a new boat.",
        subcommands = {NewYardCommand.class, NewBoatCommand.class})
public final class NewCommand extends Deed {
    @Override
    public Integer call() {
        throw new ParameterException(spec().commandLine(), "Say what: new yard, or new boat.");
    }
}

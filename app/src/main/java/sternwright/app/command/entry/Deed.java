package sternwright.app.command.entry;

import java.io.PrintWriter;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** One command: knows what holds for all of them and where answers go. */
public abstract class Deed implements Callable<Integer> {
    @Spec
    @Nullable
    CommandSpec spec;

    /** What was said before the command. */
    public final Sternwright program() {
        CommandSpec root = Objects.requireNonNull(spec);
        while (root.parent() != null) {
            root = root.parent();
        }
        return (Sternwright) root.userObject();
    }

    /** Whether it writes anything that a person may fear for when it is refused. */
    public boolean writes() {
        return false;
    }

    /** Where it stands among the commands. */
    protected final CommandSpec spec() {
        return Objects.requireNonNull(spec);
    }

    /** Where answers go. */
    public final PrintWriter out() {
        return Objects.requireNonNull(spec).commandLine().getOut();
    }

    /** Where remarks go that are no part of the answer. */
    public final PrintWriter err() {
        return Objects.requireNonNull(spec).commandLine().getErr();
    }
}

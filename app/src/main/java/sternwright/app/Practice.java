package sternwright.app;

import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Path;
import java.time.LocalDate;
import sternwright.app.command.CommandProgram;

/**
 * Runs the usual short commands once on an invented yard, so that the Java machine can lay their classes out for the next
 * start. The launcher does this after a build; nobody else needs it.
 */
public final class Practice {
    private Practice() {}

    /**
     * Practises in a folder.
     *
     * @param args an empty folder
     */
    public static void main(String[] args) {
        String yard = Path.of(args[0]).resolve("yard").toString();
        run("new", "yard", yard);
        run("--yard", yard, "new", "boat", "--arrangement", "saildrive", "--id", "practice", "--owner", "nobody");
        run("--yard", yard, "record", "practice", "--work", "change-engine-oil", "--hours", "10");
        run("--yard", yard, "due", "practice");
        run("--yard", yard, "check");
        run("--yard", yard, "boats");
        System.exit(run("--yard", yard, "due", "practice", "--json"));
    }

    private static int run(String... args) {
        PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
        return new CommandProgram(LocalDate.now(), nowhere, nowhere).run(args);
    }
}

package sternwright.app.command;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import sternwright.app.desk.DueWork;
import sternwright.app.files.YardFiles;
import sternwright.app.files.YardFolder;
import sternwright.due.Due;
import sternwright.due.Reasons;

/** What is due. */
@Command(name = "due", description = "List what is due on each part, and why.", sortOptions = false)
final class DueCommand implements Callable<Integer> {
    @ParentCommand
    @Nullable
    Sternwright program;

    @Spec
    @Nullable
    CommandSpec spec;

    @Parameters(paramLabel = "BOAT", arity = "0..*", description = "Boats; left out: all of them.")
    List<String> boats = List.of();

    @Override
    public Integer call() {
        Sternwright all = Objects.requireNonNull(program);
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        YardFiles files = boats.isEmpty()
                ? YardFolder.all(all.yard, all.latest())
                : YardFolder.only(all.yard, boats, all.latest());
        Reasons reasons = new Reasons(Locale.getDefault());
        for (Due due : new DueWork(files).all(all.today())) {
            out.println(due.dueOn() + "  " + due.boatId() + "  " + due.part() + "  "
                    + due.rule().work() + "  " + reasons.sentence(due));
        }
        return CommandProgram.DONE;
    }
}

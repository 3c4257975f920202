package sternwright.app.command.register;

import picocli.CommandLine.Command;
import sternwright.app.command.entry.Deed;
import sternwright.app.command.entry.ExitStatus;
import sternwright.app.command.text.Counted;
import sternwright.app.command.text.Json;
import sternwright.app.desk.register.CheckYard;
import sternwright.app.files.YardFiles;
import sternwright.app.files.problem.Problem;

/** Whether the yard's files hang together. */
@Command(name = "check", description = "Read every file of the yard and list all that is wrong with them.")
public final class CheckCommand extends Deed {
    @Override
    public Integer call() {
        YardFiles files = CheckYard.check(program().shelf(), program().latest());
        if (program().json()) {
            Json.print(files.remarks(), out());
            return ExitStatus.DONE;
        }
        files.remarks().stream().map(Problem::text).forEach(out()::println);
        long entries = files.histories().values().stream()
                .mapToLong(h -> h.entries().size())
                .sum();
        int remarks = files.remarks().size();
        out().println(files.yard().name() + ": " + Counted.of(files.boats().size(), "boat") + ", "
                + Counted.of(files.berths().size(), "berth") + ", "
                + Counted.of(files.programmes().size(), "programme") + " of its own, "
                + Counted.of(entries, "line") + " of history. Every reference leads somewhere"
                + (remarks == 0 ? "." : "; " + Counted.of(remarks, "remark") + " above."));
        return ExitStatus.DONE;
    }
}

package sternwright.app.command;

import java.util.List;
import java.util.Locale;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import sternwright.app.desk.DueWork;
import sternwright.app.files.YardFiles;
import sternwright.app.files.YardFolder;
import sternwright.due.Due;
import sternwright.due.Reasons;

/** What is due. */
@Command(name = "due", description = "List what is due on each part, and why.", sortOptions = false)
final class DueCommand extends Deed {
    @Parameters(paramLabel = "BOAT", arity = "0..*", description = "Boats; left out: all of them.")
    List<String> boats = List.of();

    @Override
    public Integer call() {
        YardFiles files = boats.isEmpty()
                ? YardFolder.all(program().yard, program().latest())
                : YardFolder.only(program().yard, boats, program().latest());
        List<Due> dues = new DueWork(files).all(program().today());
        if (program().json) {
            Json.print(dues, out());
            return CommandProgram.DONE;
        }
        Reasons reasons = new Reasons(Locale.getDefault());
        TextTable table = new TextTable("due", "boat", "part", "work", "why");
        dues.forEach(d -> table.row(
                d.dueOn().toString(), d.boatId(), d.part().toString(), d.rule().work(), reasons.sentence(d)));
        table.print(out());
        return CommandProgram.DONE;
    }
}

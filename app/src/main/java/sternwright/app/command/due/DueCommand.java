package sternwright.app.command.due;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import sternwright.app.command.entry.Deed;
import sternwright.app.command.entry.ExitStatus;
import sternwright.app.command.text.Csv;
import sternwright.app.command.text.Json;
import sternwright.app.desk.due.DueLine;
import sternwright.app.desk.due.DueWork;
import sternwright.app.files.YardFiles;
import sternwright.app.files.YardFolder;
import sternwright.app.files.problem.BadInput;
import sternwright.boat.Boat;
import sternwright.due.Due;
import sternwright.due.DueState;
import sternwright.due.Reasons;

/** What is due. */
@Command(
        name = "due",
        description = {
            "List what is due on each part, and why.",
            "For one boat every line with its reason and source; for the yard one line a boat."
        },
        sortOptions = false)
public final class DueCommand extends Deed {
    @Parameters(paramLabel = "BOAT", arity = "0..*", description = "Boats; left out: all of them.")
    List<String> boats = new ArrayList<>();

    @Option(
            names = "--within",
            paramLabel = "MONTHS",
            defaultValue = "12",
            description = "Look this many months ahead; left out: 12.")
    int months = 12;

    @Option(
            names = "--state",
            paramLabel = "STATE",
            split = ",",
            description =
                    "Only lines that stand so: overdue, unknown, due, coming, every-visit or refused; several with commas.")
    Set<DueState> states = EnumSet.noneOf(DueState.class);

    @Option(names = "--safety", description = "Only safety items.")
    boolean safety;

    @Option(
            names = "--rule",
            paramLabel = "RULE",
            description = "Only works of this rule, such as renew-diaphragm-seal.")
    String rule = "";

    @Option(names = "--list", description = "Every line, also for the whole yard.")
    boolean list;

    @Option(names = "--csv", description = "As a sheet (CSV).")
    boolean csv;

    @Override
    public Integer call() {
        if (months < 0) {
            throw BadInput.of("--within", months + " months", "0 or more", "");
        }
        YardFiles files = boats.isEmpty()
                ? YardFolder.all(program().shelf(), program().latest())
                : YardFolder.only(program().shelf(), boats, program().latest());
        LocalDate today = program().today();
        DueWork work = new DueWork(files);
        work.requireRule(rule);
        List<Due> dues = work.all(today).stream().filter(d -> wanted(d, today)).toList();
        if (program().json() || csv) {
            Reasons reasons = new Reasons(program().reader());
            List<DueLine> lines = dues.stream().map(d -> DueLine.of(d, reasons)).toList();
            if (csv) {
                Csv.print(lines, out());
            } else {
                Json.print(lines, out());
            }
        } else {
            print(files, dues, today);
        }
        return ExitStatus.DONE;
    }

    private boolean wanted(Due due, LocalDate today) {
        return (states.isEmpty() || states.contains(due.state()))
                && (!safety || due.rule().safety())
                && (rule.isEmpty() || rule.equals(due.rule().id()))
                && !due.dueOn().isAfter(today.plusMonths(months));
    }

    private void print(YardFiles files, List<Due> dues, LocalDate today) {
        DueText text = new DueText(out(), program().reader());
        Map<String, List<Due>> byBoat = dues.stream().collect(Collectors.groupingBy(Due::boatId));
        if (boats.isEmpty() && !list) {
            text.summary(files.boats().values(), byBoat, today);
            return;
        }
        boolean first = true;
        for (Boat boat : files.boats().values()) {
            if (!first) {
                out().println();
            }
            text.boat(boat, byBoat.getOrDefault(boat.id(), List.of()), today);
            first = false;
        }
    }
}

package sternwright.app.command.recording;

import java.io.IOException;
import java.time.LocalDate;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import sternwright.app.command.entry.Deed;
import sternwright.app.command.entry.ExitStatus;
import sternwright.app.desk.recording.StrikeEntry;
import sternwright.app.files.problem.BadInput;
import sternwright.history.Outcome;
import sternwright.history.ServiceEntry;
import sternwright.history.Strike;

/** A line of the history that is wrong. */
@Command(
        name = "strike",
        description = "Strike a wrong line of a boat's history; it stays to be seen and counts no more.",
        footer = {
            "",
            "Twice written:  sternwright strike heron --work change-engine-oil --day 2026-05-03 --who AB --why \"written twice\"",
            "A happening:    sternwright strike heron --happened grounding --day 2026-05-03 --who AB --why \"other boat\""
        },
        sortOptions = false)
public final class StrikeCommand extends Deed {
    @Parameters(paramLabel = "BOAT", description = "Id of the boat.")
    @Nullable
    String boat;

    @Option(
            names = {"--work", "--happened"},
            paramLabel = "RULE",
            required = true,
            description = "Id of the rule, or what happened, as the line has it.")
    String work = "";

    @Option(names = "--day", paramLabel = "YYYY-MM-DD", required = true, description = "The day of the line.")
    @Nullable
    LocalDate day;

    @Option(names = "--part", paramLabel = "INST/PART", description = "Its part, where several lines could be meant.")
    @Nullable
    String part;

    @Option(names = "--outcome", description = "Its outcome: done, seen, refused or happened.")
    @Nullable
    Outcome outcome;

    @Option(names = "--at", paramLabel = "H", description = "Its engine hours, where several lines could be meant.")
    @Nullable
    Double hours;

    @Option(names = "--who", paramLabel = "NAME", required = true, description = "Who strikes it.")
    String who = "";

    @Option(names = "--why", paramLabel = "TEXT", required = true, description = "What is wrong with it.")
    String why = "";

    @Override
    public boolean writes() {
        return true;
    }

    @Override
    public Integer call() throws IOException {
        if (who.isBlank() || why.isBlank()) {
            throw BadInput.of(who.isBlank() ? "--who" : "--why", "found nothing", "who strikes it, and why", "");
        }
        String id = Objects.requireNonNull(boat);
        Strike strike = new Strike(program().today(), who.strip(), why.strip());
        StrikeEntry.Struck struck = StrikeEntry.strike(
                program().shelf(), id, this::meant, strike, program().today());
        RecordedText.print(id, struck, program().json(), program().reader(), out());
        return ExitStatus.DONE;
    }

    private boolean meant(ServiceEntry e) {
        return e.ruleId().equals(work)
                && e.date().equals(day)
                && (part == null || e.part().toString().equals(part))
                && (outcome == null || e.outcome() == outcome)
                && (hours == null || hours.equals(e.hours()));
    }
}

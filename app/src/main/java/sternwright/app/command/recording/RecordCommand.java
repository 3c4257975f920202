package sternwright.app.command.recording;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import sternwright.app.command.entry.Deed;
import sternwright.app.command.entry.ExitStatus;
import sternwright.app.desk.recording.RecordWork;
import sternwright.app.desk.recording.TypedWork;
import sternwright.app.files.sheet.HistorySheet;
import sternwright.app.files.sheet.TableFile;

/** What was done, seen, refused or happened. */
@Command(
        name = "record",
        description = "Write down what was done on a boat; shows how her due list moves.",
        footer = {
            "",
            "One work:    sternwright record heron --work change-engine-oil --part main/engine --hours 412 --who AB",
            "A refusal:   sternwright record heron --work renew-bellows --refused-by \"A. Owner\"",
            "A happening: sternwright record heron --happened grounding",
            "A visit:     sternwright record heron --csv visit.csv   (columns of history, see docs/file-formats.md)"
        },
        sortOptions = false)
public final class RecordCommand extends Deed {
    @Parameters(paramLabel = "BOAT", description = "Id of the boat.")
    @Nullable
    String boat;

    @Option(
            names = "--work",
            paramLabel = "RULE",
            description =
                    "Id of the rule that was carried out, as \"due BOAT\" and \"due BOAT --csv\" name it; may be repeated.")
    List<String> works = List.of();

    @Option(
            names = "--part",
            paramLabel = "INST/PART",
            description = "The part worked on; may be left out where the rule is for one part only.")
    @Nullable
    String part;

    @Option(names = "--day", paramLabel = "YYYY-MM-DD", description = "When; left out: today.")
    @Nullable
    LocalDate day;

    @Option(names = "--hours", paramLabel = "H", description = "What the engine's hour meter showed.")
    @Nullable
    Double hours;

    @Option(names = "--who", paramLabel = "NAME", defaultValue = "", description = "Who did it.")
    String who = "";

    @Option(
            names = "--reading",
            paramLabel = "NAME=VALUE",
            description =
                    "What was measured, such as anode-remaining=45, oil-pressure=55psi or water-in-oil=no; may be repeated.")
    List<String> readings = List.of();

    @Option(names = "--note", defaultValue = "", description = "Free text.")
    String note = "";

    @Option(names = "--seen", description = "Only looked at or measured; the work itself was not done.")
    boolean seen;

    @Option(names = "--refused-by", paramLabel = "NAME", description = "Who signed that it is not to be done.")
    @Nullable
    String refusedBy;

    @Option(names = "--happened", paramLabel = "WHAT", description = "Something happened, such as grounding.")
    @Nullable
    String happened;

    @Option(names = "--csv", paramLabel = "FILE", description = "A whole visit as a table.")
    @Nullable
    Path csv;

    @Option(names = "--as-read", description = "Keep a meter reading although it is out of line.")
    boolean asRead;

    @Override
    public boolean writes() {
        return true;
    }

    @Override
    public Integer call() throws IOException {
        oneThing();
        String id = Objects.requireNonNull(boat);
        TypedWork.Typed typed = new TypedWork.Typed(
                works,
                part,
                day == null ? program().today() : day,
                hours,
                who,
                readings,
                note,
                seen,
                refusedBy,
                happened);
        RecordWork.Said said = csv == null
                ? TypedWork.said(program().shelf(), id, typed, program().clock())
                : TypedWork.said(
                        TableFile.of(csv, HistorySheet.ONE_BOAT.header()),
                        program().clock());
        RecordWork.Recorded recorded = RecordWork.record(
                program().shelf(), id, said, program().today(), program().clock(), asRead);
        RecordedText.print(id, recorded, program().json(), program().reader(), out());
        return ExitStatus.DONE;
    }

    private void oneThing() {
        List<String> said = new ArrayList<>();
        if (!works.isEmpty()) {
            said.add("--work");
        }
        if (happened != null) {
            said.add("--happened");
        }
        if (csv != null) {
            said.add("--csv");
        }
        if (said.size() != 1) {
            throw new ParameterException(
                    spec().commandLine(),
                    said.isEmpty()
                            ? "Say what was done: --work RULE, --happened WHAT or --csv FILE."
                            : "Say one thing at a time, not " + String.join(" and ", said) + ".");
        }
    }
}

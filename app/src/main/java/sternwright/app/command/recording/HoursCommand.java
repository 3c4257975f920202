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
import sternwright.app.desk.recording.ReadMeter;
import sternwright.app.desk.recording.RecordWork;
import sternwright.app.files.problem.BadInput;
import sternwright.history.MeterReading;

/** An hour meter read or replaced. */
@Command(
        name = "hours",
        description = "Write down what an engine's hour meter shows, or that it was replaced.",
        sortOptions = false)
public final class HoursCommand extends Deed {
    @Parameters(index = "0", paramLabel = "BOAT", description = "Id of the boat.")
    @Nullable
    String boat;

    @Parameters(index = "1", paramLabel = "INSTALLATION", description = "Id of the installation, such as main.")
    @Nullable
    String installation;

    @Parameters(
            index = "2",
            paramLabel = "HOURS",
            description = "What the meter shows; for a replacement the last figure of the old one.")
    double hours;

    @Option(names = "--new-meter", paramLabel = "H", description = "The first figure of the new meter.")
    @Nullable
    Double newMeter;

    @Option(names = "--day", paramLabel = "YYYY-MM-DD", description = "When; left out: today.")
    @Nullable
    LocalDate day;

    @Option(names = "--who", paramLabel = "NAME", defaultValue = "", description = "Who read it.")
    String who = "";

    @Option(names = "--as-read", description = "Keep a reading although it is out of line.")
    boolean asRead;

    @Override
    public boolean writes() {
        return true;
    }

    @Override
    public Integer call() throws IOException {
        if (newMeter != null && !(newMeter >= 0)) {
            throw BadInput.of("--new-meter", "found " + newMeter, "hours of at least 0", "");
        }
        LocalDate date = day == null ? program().today() : day;
        if (date.isAfter(program().clock())) {
            throw BadInput.of(
                    "--day",
                    date + " lies in the future",
                    "a date up to " + program().clock(),
                    "");
        }
        MeterReading reading = new MeterReading(date, Objects.requireNonNull(installation), hours, newMeter, who);
        String id = Objects.requireNonNull(boat);
        RecordWork.Recorded recorded = ReadMeter.read(
                program().shelf(), id, reading, program().today(), program().clock(), asRead);
        RecordedText.print(id, recorded, program().json(), program().reader(), out());
        return ExitStatus.DONE;
    }
}

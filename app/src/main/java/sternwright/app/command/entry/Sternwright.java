package sternwright.app.command.entry;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;
import sternwright.app.desk.keeping.YardPlace;
import sternwright.app.files.shelf.Shelf;
import sternwright.app.paper.Figures;

/** The program's first word and what holds for every command. */
@Command(
        name = "sternwright",
        version = "sternwright 0.1.0",
        description = "Service of other people's boat propulsion machinery: what is due, and when it is best done.",
        synopsisSubcommandLabel = "COMMAND",
        sortOptions = false)
public final class Sternwright implements Callable<Integer> {
    @Spec
    @Nullable
    CommandSpec spec;

    @Option(
            names = "--yard",
            paramLabel = "FOLDER",
            defaultValue = ".",
            scope = ScopeType.INHERIT,
            description = "The yard's folder; left out: the folder you are in.")
    Path yard = Path.of(".");

    @Option(
            names = "--date",
            paramLabel = "YYYY-MM-DD",
            scope = ScopeType.INHERIT,
            description = "The day to take for today.")
    @Nullable
    LocalDate date;

    @Option(names = "--json", scope = ScopeType.INHERIT, description = "Answer in JSON, for other programs.")
    boolean json;

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            scope = ScopeType.INHERIT,
            description = "Say how it is used.")
    boolean help;

    @Option(
            names = {"-V", "--version"},
            versionHelp = true,
            description = "Say which version this is.")
    boolean version;

    private final LocalDate clock;

    @Nullable
    private YardPlace place;

    /**
     * Before anything was typed.
     *
     * @param clock the day the clock shows
     */
    public Sternwright(LocalDate clock) {
        this.clock = clock;
    }

    /** The yard's folder. */
    public Path yard() {
        return yard;
    }

    /** Where the yard's texts are kept. */
    public Shelf shelf() {
        try {
            return place().shelf(person());
        } catch (IOException e) {
            throw new UncheckedIOException(e.getMessage(), e);
        }
    }

    /** Where the yard is kept: in its folder or in a store. */
    public YardPlace place() throws IOException {
        if (place == null) {
            place = YardPlace.of(yard, System.getenv(), Clock.systemDefaultZone());
        }
        return place;
    }

    /** Who sits at the machine, as the machine knows it; a store notes this beside what is written. */
    public String person() {
        return System.getProperty("user.name", "") + " at the command line";
    }

    /** Closes what the command has opened. */
    public void close() {
        if (place != null) {
            place.close();
            place = null;
        }
    }

    /** Whether the answer is for other programs. */
    public boolean json() {
        return json;
    }

    /** The reader's region, for dates, numbers and money; English words, Great Britain where the machine names no region. */
    public Locale reader() {
        return Figures.of(Locale.getDefault()).locale();
    }

    /** The day asked for. */
    public LocalDate today() {
        return date == null ? clock : date;
    }

    /** The day typed, null if none was. */
    public @Nullable LocalDate asked() {
        return date;
    }

    /** The day the clock shows: nothing that is written down can have happened after it, whatever day is asked for. */
    public LocalDate clock() {
        return clock;
    }

    /** The last day on which anything can have happened: the clock's, or the day asked for if that is later. */
    public LocalDate latest() {
        return today().isAfter(clock) ? today() : clock;
    }

    @Override
    public Integer call() {
        throw new ParameterException(
                java.util.Objects.requireNonNull(spec).commandLine(), "A command is missing: say what to do.");
    }
}

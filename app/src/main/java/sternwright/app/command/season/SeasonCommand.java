package sternwright.app.command.season;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import sternwright.app.command.entry.Deed;
import sternwright.app.command.entry.ExitStatus;
import sternwright.app.command.text.Csv;
import sternwright.app.command.text.Json;
import sternwright.app.desk.season.Clash;
import sternwright.app.desk.season.EventWords;
import sternwright.app.desk.season.NoSuchSeason;
import sternwright.app.desk.season.PlanSeason;
import sternwright.app.desk.season.PlannedSeason;
import sternwright.app.desk.season.PublishSeason;
import sternwright.app.desk.season.SeasonAsk;
import sternwright.app.desk.season.SeasonLine;
import sternwright.app.desk.season.SeasonPapers;
import sternwright.app.desk.season.SeasonView;
import sternwright.app.files.SeasonFolder;
import sternwright.app.files.problem.BadInput;
import sternwright.app.paper.Figures;
import sternwright.season.dated.Published;
import sternwright.season.dated.event.SeasonEvent;

/** The season. */
@Command(
        name = "season",
        description = {
            "Plan every visit on days, with hoist, hard standing and people; promises are kept first.",
            "If a plan is published, plan on from it and say which dates move, and why.",
            "Ctrl-C stops the search and keeps the best plan so far."
        },
        sortOptions = false)
public final class SeasonCommand extends Deed {
    private static final int A_DAY = 86_400;
    private static final double PROOF_SECONDS = 5;
    private static final double SEARCH_SECONDS = 20;

    /** The plan is repaired at once; whoever waits on the telephone has the better one within ten seconds. */
    private static final double AFTER_EVENT_SECONDS = 8;

    @Option(
            names = "--seconds",
            paramLabel = "SECONDS",
            description = "How long to search; left out: 20, after an event 8.")
    @Nullable
    Double given;

    @Option(
            names = "--after",
            paramLabel = "EVENT",
            arity = "1..*",
            description = {
                "What has happened: away:PERSON:FROM:TO, hoist-down:HOIST:FROM:TO,",
                "late:BOAT:RULE:DATE (the part is here on that day), emergency:BOAT[:DATE], wanted:BOAT:DATE,",
                "set:BOAT:VISIT:OPERATION:DATE (that day, whatever it costs)."
            })
    List<String> after = new ArrayList<>();

    @Option(
            names = "--fresh",
            description = "Plan without regard to the published plan; promises.csv is kept all the same.")
    boolean fresh;

    @Option(
            names = "--to",
            paramLabel = "YYYY-MM-DD",
            description = "Last day of the season; left out: two months after the recommission ends.")
    @Nullable
    LocalDate to;

    @Option(names = "--list", description = "Every operation, with its reason.")
    boolean list;

    @Option(names = "--csv", description = "Every operation as a sheet (CSV).")
    boolean csv;

    @Option(
            names = "--compare",
            arity = "0..1",
            fallbackValue = "season.csv",
            paramLabel = "PLAN.csv",
            description = "Show this plan beside another; left empty: beside the published one.")
    @Nullable
    Path compare;

    @Option(
            names = "--calendar",
            paramLabel = "FOLDER",
            description = "Write a calendar file (iCalendar) for each of the crew and for each boat.")
    @Nullable
    Path calendar;

    @Option(
            names = "--board",
            paramLabel = "FILE",
            description = "Write the season board: a page if the name ends in .html, paper if it ends in .pdf.")
    List<Path> boards = new ArrayList<>();

    @Option(
            names = "--one-more",
            description = "Say also what one more hoist, place or person would save; takes a second for each.")
    boolean oneMore;

    @Option(names = "--publish", description = "Make this the plan that the yard works by (season.csv).")
    boolean publish;

    @Option(names = "--seed", paramLabel = "NUMBER", defaultValue = "1", description = "Seed of the search.")
    long seed = 1;

    @Override
    public boolean writes() {
        return publish;
    }

    @Override
    public Integer call() throws IOException {
        LocalDate today = program().today();
        boards.forEach(SeasonPapers::requireEnding);
        double seconds = given != null ? given : after.isEmpty() ? SEARCH_SECONDS : AFTER_EVENT_SECONDS;
        if (!(seconds > 0) || seconds > A_DAY) {
            throw BadInput.of("--seconds", "found " + seconds, "a number above 0, at most " + A_DAY, "");
        }
        List<SeasonEvent> events =
                after.stream().map(e -> EventWords.parse(e, today, "--after")).toList();
        SeasonAsk ask = new SeasonAsk(
                program().shelf(), today, program().latest(), to, fresh, events, seconds, seed, System::nanoTime);
        SeasonProgress progress = new SeasonProgress(err(), Figures.of(program().reader()));
        Thread hook = progress.keepOnInterrupt();
        try {
            PlannedSeason planned = PlanSeason.of(ask, progress);
            if (progress.stopped()) {
                progress.says("Stopped; this is the best plan so far.");
            }
            show(planned);
            write(planned, events, today);
            out().flush();
            err().flush();
        } catch (NoSuchSeason none) {
            if (program().json()) {
                Json.print(Map.of("noSeason", none.clash()), out());
                out().flush();
            }
            throw none;
        } finally {
            progress.finished(hook);
        }
        return ExitStatus.DONE;
    }

    private void show(PlannedSeason planned) {
        if (program().json()) {
            Json.print(
                    SeasonView.of(planned)
                            .unsafe(planned.whyUnsafe(seed, PROOF_SECONDS).orElse(null)),
                    out());
        } else if (csv) {
            Csv.print(SeasonLine.all(planned.dated()), out());
        } else {
            SeasonText text =
                    new SeasonText(out(), planned, Figures.of(program().reader()));
            text.print(
                    list,
                    planned.whyUnsafe(seed, PROOF_SECONDS).map(Clash::sentences).orElse(List.of()));
            if (oneMore) {
                text.oneMore(planned.oneMore(1, System::nanoTime));
            }
            if (compare != null) {
                Path file = program().yard().resolve(compare);
                text.compare(plan(compare), String.valueOf(file.getFileName()));
            }
        }
    }

    /** A plan of the yard's, or one that was kept anywhere else. */
    private List<Published> plan(Path file) {
        return file.equals(Path.of(SeasonFolder.PLAN))
                ? SeasonFolder.plan(
                        program().shelf(), SeasonFolder.PLAN, program().latest())
                : SeasonFolder.plan(program().yard(), file, program().latest());
    }

    private void write(PlannedSeason planned, List<SeasonEvent> events, LocalDate today) throws IOException {
        SeasonPapers papers = new SeasonPapers(planned, today);
        for (Path board : boards) {
            papers.board(board);
            err().println("Board: " + board);
        }
        if (calendar != null) {
            err().println(papers.calendars(calendar) + " calendar files in " + calendar);
        }
        if (publish) {
            LocalDate basis = fresh ? today : planned.visitsOf().orElse(today);
            PublishSeason.write(program().shelf(), planned, events, basis);
            err().println("Published: the yard works by this plan (" + SeasonFolder.PLAN + ").");
        }
    }
}

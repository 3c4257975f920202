package sternwright.app.web.season;

import java.io.IOException;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import sternwright.app.account.AuditTrail;
import sternwright.app.account.SentOnce;
import sternwright.app.desk.derived.SeasonOfYard;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.desk.season.EventWords;
import sternwright.app.desk.season.PlannedSeason;
import sternwright.app.desk.season.board.JudgedRuns;
import sternwright.app.desk.season.board.SeasonBoards;
import sternwright.app.desk.season.run.RunAsk;
import sternwright.app.desk.season.run.SeasonJobs;
import sternwright.app.files.SeasonFolder;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.shelf.EditConflict;
import sternwright.app.files.shelf.Kept;
import sternwright.app.store.job.SeasonRun;
import sternwright.app.web.access.ForAll;
import sternwright.app.web.access.ForOffice;
import sternwright.app.web.page.Missing;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.Section;
import sternwright.season.dated.event.SeasonEvent;

/** Runs of the season: asked for, watched, stopped, published. */
@Controller
@ForOffice
public class RunsPage {
    static final String PATH = SeasonPage.PATH + "/runs";
    private static final List<Integer> SPANS = List.of(20, 60, 300, 1800);
    private static final int NEWEST = 20;
    private static final long SEED = 1;

    private final OpenYard yard;
    private final SeasonBoards boards;
    private final SeasonJobs jobs;
    private final RunPlans plans;
    private final SentOnce sent;
    private final AuditTrail audit;
    private final Clock clock;
    private final SeasonOfYard season;
    private final BoardDrawings drawings;
    private final JudgedRuns judged;

    RunsPage(
            OpenYard yard,
            SeasonBoards boards,
            SeasonJobs jobs,
            RunPlans plans,
            SentOnce sent,
            AuditTrail audit,
            Clock clock,
            SeasonOfYard season,
            BoardDrawings drawings,
            JudgedRuns judged) {
        this.judged = judged;
        this.season = season;
        this.drawings = drawings;
        this.yard = yard;
        this.boards = boards;
        this.jobs = jobs;
        this.plans = plans;
        this.sent = sent;
        this.audit = audit;
        this.clock = clock;
    }

    /**
     * What the page of all runs shows.
     *
     * @param published whether there is a plan to go on from
     * @param spans for how long one can search, s, with words
     * @param runs the newest first
     */
    public record View(boolean published, List<Span> spans, List<BoardView.Run> runs) {
        /** Copies the lists. */
        public View {
            spans = List.copyOf(spans);
            runs = List.copyOf(runs);
        }
    }

    /**
     * For how long one can search.
     *
     * @param seconds s
     * @param words as it is read
     * @param usual whether it is chosen unless somebody chooses
     */
    public record Span(int seconds, String words, boolean usual) {}

    static List<Span> spans(Page page) {
        return SPANS.stream()
                .map(s -> new Span(
                        s,
                        s < 60
                                ? page.figures().quantity(s, "s")
                                : page.figures().time(s / 60.0),
                        s == 60))
                .toList();
    }

    @GetMapping(PATH)
    ModelAndView all(Page page) {
        RunText text = text(page);
        List<BoardView.Run> runs = jobs.newest(NEWEST).stream()
                .map(r -> new BoardView.Run(r.id(), text.line(r)))
                .toList();
        return page.show(
                Section.SEASON, "season/runs", new View(boards.published().isPresent(), spans(page), runs));
    }

    @PostMapping(PATH)
    ModelAndView ask(
            Page page,
            @RequestParam Map<String, String> typed,
            @RequestParam(name = "e", required = false) List<String> events)
            throws IOException {
        List<SeasonEvent> happened = new ArrayList<>();
        for (String each : events == null ? List.<String>of() : events) {
            happened.add(EventWords.parse(each, yard.today(), page.say("season.happened.where")));
        }
        boolean fresh = typed.getOrDefault("fresh", "").equals("true");
        RunAsk ask = new RunAsk(yard.today(), null, fresh, happened, seconds(typed), SEED, version());
        Optional<String> id = sent.take(typed.getOrDefault("once", ""), page.whoId(), () -> jobs.ask(ask, page.who()));
        if (id.isEmpty()) {
            return page.go(PATH, "season.run.twice");
        }
        audit.note("season.asked", id.get(), "");
        return page.go(PATH + "/" + id.get(), "");
    }

    private static double seconds(Map<String, String> typed) {
        return SPANS.stream()
                .filter(s -> typed.getOrDefault("seconds", "").equals(Integer.toString(s)))
                .findFirst()
                .orElse(60);
    }

    private String version() throws IOException {
        return yard.shelf("").kept(SeasonFolder.PLAN).map(Kept::version).orElse("");
    }

    @GetMapping(PATH + "/{id}")
    @ForAll
    ModelAndView one(Page page, @PathVariable("id") String id) {
        SeasonRun run = head(id);
        RunText text = text(page);
        RunView.Plan plan = null;
        if (run.ended() && run.plan() != null) {
            try {
                plan = plans.of(page, run, text).orElse(null);
            } catch (BadInput changed) {
                return page.show(Section.SEASON, "season/changed", changed.problems());
            }
        }
        EventText events = new EventText(page, yard.files(), season.files().resources());
        List<String> words =
                SeasonJobs.asked(run).events().stream().map(events::words).toList();
        return page.show(Section.SEASON, "season/run", text.view(run, words, Optional.ofNullable(plan)));
    }

    /**
     * What the page with a run's board shows.
     *
     * @param id of the run
     * @param published whether the yard works by it
     * @param stretches days to choose with one press
     * @param board the drawing and the table behind it
     */
    public record BoardOf(String id, boolean published, List<BoardView.Stretch> stretches, BoardView.Board board) {
        /** Copies the list. */
        public BoardOf {
            stretches = List.copyOf(stretches);
        }
    }

    @GetMapping(PATH + "/{id}/board")
    @ForAll
    ModelAndView board(Page page, @PathVariable("id") String id, @RequestParam Map<String, String> typed) {
        SeasonRun head = head(id);
        if (head.plan() == null) {
            throw new Missing("season.run.one");
        }
        SeasonRun run = judged.underWay(head) ? null : run(id);
        PlannedSeason planned = run == null ? null : judged.of(run).orElse(null);
        if (run == null || planned == null) {
            // The run's own page shows it as soon as it was looked through.
            return page.go(PATH + "/" + id, "");
        }
        BoardAsked asked = BoardAsked.of(typed);
        BoardText text =
                new BoardText(page, planned.dated(), yard.today(), text(page).sums());
        BoardDrawings.Key key = new BoardDrawings.Key(
                String.join(
                        " ",
                        id,
                        Double.toString(head.spentS()),
                        yard.state(),
                        yard.today().toString()),
                asked,
                page.locale(),
                false);
        return page.show(
                Section.SEASON,
                "season/runboard",
                new BoardOf(
                        id,
                        plans.published(run),
                        text.stretches(asked, PATH + "/" + id + "/board"),
                        drawings.of(key, () -> text.board(asked, false, o -> false))));
    }

    @PostMapping(PATH + "/{id}/stop")
    ModelAndView stop(Page page, @PathVariable("id") String id) {
        jobs.stop(run(id).id());
        audit.note("season.stopped", id, "");
        return page.go(PATH + "/" + id, "");
    }

    @PostMapping(PATH + "/{id}/publish")
    ModelAndView publish(
            Page page, @PathVariable("id") String id, @RequestParam(name = "once", defaultValue = "") String once)
            throws IOException {
        SeasonRun run = run(id);
        try {
            Optional<Optional<PlannedSeason>> done = sent.take(once, page.whoId(), () -> jobs.publish(run, page.who()));
            if (done.isEmpty()) {
                return page.go(SeasonPage.PATH, "season.published.twice");
            }
            done.get().ifPresent(boards::publishedFrom);
        } catch (EditConflict theirs) {
            return page.conflict(Section.SEASON, SeasonPage.PATH, page.say("season.this"));
        }
        yard.changed();
        audit.note("season.published", id, "");
        return page.go(SeasonPage.PATH, "season.published");
    }

    private RunText text(Page page) {
        return new RunText(page, yard.files().yard().currency(), clock.getZone());
    }

    /** A run without its plan, which may be megabytes. */
    private SeasonRun head(String id) {
        return jobs.head(id).orElseThrow(() -> new Missing("season.run.one"));
    }

    private SeasonRun run(String id) {
        return jobs.one(id).orElseThrow(() -> new Missing("season.run.one"));
    }
}

package sternwright.app.api;

import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import jakarta.annotation.security.RolesAllowed;
import java.io.IOException;
import java.net.URI;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ProblemDetail;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import sternwright.app.account.AuditTrail;
import sternwright.app.desk.derived.Busy;
import sternwright.app.desk.derived.MadeOnce;
import sternwright.app.desk.season.EventWords;
import sternwright.app.desk.season.MoveVisit;
import sternwright.app.desk.season.PlannedSeason;
import sternwright.app.desk.season.SeasonView;
import sternwright.app.desk.season.board.JudgedRuns;
import sternwright.app.desk.season.run.RunAsk;
import sternwright.app.desk.season.run.RunCourse;
import sternwright.app.desk.season.run.SeasonJobs;
import sternwright.app.files.SeasonFolder;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.problem.Problem;
import sternwright.app.files.shelf.EditConflict;
import sternwright.app.files.shelf.Kept;
import sternwright.app.store.job.SeasonRun;
import sternwright.season.dated.answer.MovedDate;
import tools.jackson.databind.json.JsonMapper;

/** Runs of the season: asked for, watched, stopped, published. They go on whoever looks. */
@RestController
@RolesAllowed({"MANAGER", "OFFICE", "TECHNICIAN", "SURVEYOR"})
public class SeasonRunsApi {
    private static final int NEWEST = 1000;
    private static final double MOST_SECONDS = 86_400;

    private final Asked asked;
    private final SeasonJobs jobs;
    private final AuditTrail audit;
    private final MadeOnce made;
    private final JudgedRuns judged;
    private final JsonMapper json;

    SeasonRunsApi(Asked asked, SeasonJobs jobs, AuditTrail audit, MadeOnce made, JudgedRuns judged, JsonMapper json) {
        this.judged = judged;
        this.made = made;
        this.json = json;
        this.asked = asked;
        this.jobs = jobs;
        this.audit = audit;
    }

    /**
     * What is wanted of a run.
     *
     * @param seconds how long to search, 60 if missing
     * @param fresh plan without regard to the published plan
     * @param to last day of the season, null for two months after the recommission ends
     * @param events what has happened, each as the command line says it: away:PERSON:FROM:TO, hoist-down:HOIST:FROM:TO,
     *     late:BOAT:RULE:DATE, emergency:BOAT[:DATE], wanted:BOAT:DATE, set:BOAT:VISIT:OPERATION:DATE
     * @param seed seed of all random draws, 1 if missing
     */
    public record Wanted(
            @Nullable Double seconds,
            @Nullable Boolean fresh,
            @Nullable LocalDate to,
            @Nullable List<String> events,
            @Nullable Long seed) {}

    /**
     * How a run stands.
     *
     * @param id of the run
     * @param askedBy who asked for it
     * @param askedAt when
     * @param state how far it is
     * @param says what it does, or why it could not
     * @param seconds how long it was asked to search, s
     * @param spentS how long it has searched, s
     * @param cost of the best plan so far, in the yard's currency; null before the first
     * @param bound no plan can cost less; null before the first
     * @param gap part of the cost not proved necessary, 0 to 1
     * @param events what has happened before it
     * @param course how cost and bound went
     * @param refused why there is no plan; of a run that ended with one why boats are not safe against frost in it
     */
    public record Run(
            String id,
            String askedBy,
            Instant askedAt,
            SeasonRun.State state,
            String says,
            double seconds,
            double spentS,
            @Nullable Double cost,
            @Nullable Double bound,
            @Nullable Double gap,
            List<String> events,
            List<RunCourse.Point> course,
            List<Problem> refused) {
        static Run of(SeasonRun run) {
            RunAsk ask = SeasonJobs.asked(run);
            Double cost = run.cost();
            Double bound = run.bound();
            return new Run(
                    run.id(),
                    run.by(),
                    run.at(),
                    run.state(),
                    run.says(),
                    ask.seconds(),
                    run.spentS(),
                    cost,
                    bound,
                    cost == null || bound == null ? null : cost <= 0 ? 0 : Math.max(0, (cost - bound) / cost),
                    ask.events().stream().map(EventWords::text).toList(),
                    RunCourse.of(run.course()).points(),
                    SeasonJobs.refused(run));
        }
    }

    /**
     * What stands on another day than in the published plan.
     *
     * @param promised dates that owners know, each with its price and reason
     * @param all every operation, promised dates first
     */
    public record Moves(List<MovedDate> promised, List<MoveVisit.Move> all) {
        /** Copies the lists. */
        public Moves {
            promised = List.copyOf(promised);
            all = List.copyOf(all);
        }
    }

    /** Asks for a run. */
    @PostMapping("/api/season/runs")
    @RolesAllowed({"MANAGER", "OFFICE"})
    ResponseEntity<Run> ask(@RequestBody Wanted wanted) throws IOException {
        double seconds = wanted.seconds() == null ? 60 : wanted.seconds();
        if (!(seconds > 0 && seconds <= MOST_SECONDS)) {
            throw BadInput.of("seconds", "found " + seconds, "more than 0, at most " + MOST_SECONDS, "");
        }
        LocalDate today = asked.yard().today();
        RunAsk ask = new RunAsk(
                today,
                wanted.to(),
                Boolean.TRUE.equals(wanted.fresh()),
                Objects.requireNonNullElse(wanted.events(), List.<String>of()).stream()
                        .map(e -> EventWords.parse(e, today, "events"))
                        .toList(),
                seconds,
                wanted.seed() == null ? 1 : wanted.seed(),
                version());
        String id = jobs.ask(ask, Asked.person().fullName());
        audit.note("season.asked", id, "");
        return ResponseEntity.created(URI.create("/api/season/runs/" + id)).body(Run.of(run(id)));
    }

    /** The newest runs, the newest first. */
    @GetMapping("/api/season/runs")
    Stretch<Run> all(
            @RequestParam(name = "page", defaultValue = "1") int page,
            @RequestParam(name = "size", defaultValue = "20") int size) {
        return Stretch.of(jobs.newest(NEWEST), page, size, Run::of);
    }

    /** How a run stands; ask again with If-None-Match to be told only of what is new. */
    @GetMapping("/api/season/runs/{id}")
    ResponseEntity<Run> one(@PathVariable("id") String id) {
        SeasonRun run = head(id);
        String mark = run.state() + "." + Math.round(run.spentS() * 10) + "." + run.cost() + "." + run.bound();
        return ResponseEntity.ok().eTag(EntityTag.of(mark)).body(Run.of(run));
    }

    /** Asks that a run stops and keeps its best plan. */
    @PostMapping("/api/season/runs/{id}/stop")
    @RolesAllowed({"MANAGER", "OFFICE"})
    ResponseEntity<Run> stop(@PathVariable("id") String id) {
        jobs.stop(head(id).id());
        audit.note("season.stopped", id, "");
        return ResponseEntity.accepted().body(Run.of(head(id)));
    }

    /** The best plan of a run so far, as it was kept. */
    @ApiResponse(responseCode = "200", content = @Content(schema = @Schema(implementation = SeasonStretch.class)))
    @GetMapping(value = "/api/season/runs/{id}/plan", produces = MediaType.APPLICATION_JSON_VALUE)
    byte[] plan(
            @PathVariable("id") String id,
            @RequestParam(name = "page", defaultValue = "1") int page,
            @RequestParam(name = "size", defaultValue = "100") int size) {
        Stretch.check(page, size);
        return made.of(
                String.join(" ", "plan", Integer.toString(page), Integer.toString(size), what(id)),
                () -> json.writeValueAsBytes(SeasonStretch.of(SeasonView.of(planned(id)), page, size)));
    }

    /** A plan of a run is judged as the yard is now. */
    private String what(String id) {
        SeasonRun run = head(id);
        return String.join(" ", id, Double.toString(run.spentS()), asked.now());
    }

    /** What would stand on another day than in the published plan. */
    @ApiResponse(responseCode = "200", content = @Content(schema = @Schema(implementation = Moves.class)))
    @GetMapping(value = "/api/season/runs/{id}/moves", produces = MediaType.APPLICATION_JSON_VALUE)
    byte[] moves(@PathVariable("id") String id) {
        return made.of("moves " + what(id), () -> json.writeValueAsBytes(moves(planned(id))));
    }

    private static Moves moves(PlannedSeason planned) {
        return new Moves(planned.dated().moved(), MoveVisit.moves(planned));
    }

    /**
     * Makes the plan of a run the one the yard works by; only if the plan now published is still the one of the entity tag in
     * If-Match ({@code *} where none is published yet), and still the one the run went on from.
     */
    @PostMapping("/api/season/runs/{id}/publish")
    @RolesAllowed({"MANAGER", "OFFICE"})
    ResponseEntity<?> publish(
            @PathVariable("id") String id,
            @RequestHeader(name = HttpHeaders.IF_MATCH, required = false) @Nullable String version)
            throws IOException {
        if (version == null) {
            return ResponseEntity.of(ProblemDetail.forStatusAndDetail(
                            HttpStatus.PRECONDITION_REQUIRED,
                            "Send the entity tag of /api/season as If-Match, or * where no plan is published yet,"
                                    + " so that nobody's plan is lost."))
                    .build();
        }
        Kept now = asked.shelf().kept(SeasonFolder.PLAN).orElse(null);
        String there = now == null ? "*" : EntityTag.of(now.version());
        if (!there.equals(version.startsWith("W/") ? version.substring(2) : version)) {
            throw new EditConflict(SeasonFolder.PLAN, "", now);
        }
        if (jobs.publish(run(id), Asked.person().fullName()).isEmpty()) {
            throw BadInput.of("run", "it has no plan yet", "a run with a plan", "Wait until it has one.");
        }
        asked.yard().changed();
        audit.note("season.published", id, "");
        return ResponseEntity.noContent().eTag(EntityTag.of(version())).build();
    }

    private PlannedSeason planned(String id) {
        SeasonRun run = run(id);
        if (run.plan() == null) {
            throw BadInput.of("run", "it has no plan yet", "a run with a plan", "Wait until it has one.");
        }
        return judged.of(run).orElseThrow(() -> new Busy("the plan is being looked through"));
    }

    private String version() throws IOException {
        return asked.shelf().kept(SeasonFolder.PLAN).map(Kept::version).orElse("");
    }

    private SeasonRun run(String id) {
        return jobs.one(id).orElseThrow(() -> missing(id));
    }

    private SeasonRun head(String id) {
        return jobs.head(id).orElseThrow(() -> missing(id));
    }

    private NotThere missing(String id) {
        return new NotThere(
                "run", id, jobs.newest(NEWEST).stream().map(SeasonRun::id).toList());
    }
}

package sternwright.app.desk.season.run;

import com.github.kagkarlsson.scheduler.Scheduler;
import com.github.kagkarlsson.scheduler.SchedulerBuilder;
import com.github.kagkarlsson.scheduler.SchedulerName;
import com.github.kagkarlsson.scheduler.task.TaskDescriptor;
import com.github.kagkarlsson.scheduler.task.helper.OneTimeTask;
import com.github.kagkarlsson.scheduler.task.helper.Tasks;
import java.io.IOException;
import java.lang.ref.SoftReference;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.LongSupplier;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import sternwright.app.desk.season.PlanSeason;
import sternwright.app.desk.season.PlannedSeason;
import sternwright.app.desk.season.PublishSeason;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.problem.Problem;
import sternwright.app.files.sheet.SeasonSheets;
import sternwright.app.files.sheet.Sheet;
import sternwright.app.files.sheet.TableFile;
import sternwright.app.store.Store;
import sternwright.app.store.job.SeasonRun;
import sternwright.app.store.job.SeasonRuns;
import sternwright.app.store.job.SqliteJobs;
import sternwright.season.dated.Published;
import tools.jackson.databind.json.JsonMapper;

/** Runs of the season on a store: asked for at one program, done once by any, seen and stopped from all. */
public final class SeasonJobs implements AutoCloseable {
    private static final TaskDescriptor<Void> TASK = TaskDescriptor.of("season");

    /** A program is taken for dead after so many missed beats. */
    private static final int MISSED_BEATS = 4;

    /** Long ago by the clock of any program. */
    private static final Instant AT_ONCE = Instant.EPOCH;

    private static final Logger LOG = LoggerFactory.getLogger(SeasonJobs.class);
    /** Whoever asked for the run waits for its end: a proof is tried, not insisted on. */
    private static final double PROOF_SECONDS = 0.2;

    private static final JsonMapper JSON = JsonMapper.builder().build();

    private final Store store;
    private final SeasonRuns runs;
    private final LongSupplier nanoClock;
    private final String node;
    private final Scheduler scheduler;

    @Nullable
    private volatile Made made;

    /** The plan of the run last worked on or looked at here; given up when memory is short. */
    private record Made(String id, String plan, SoftReference<PlannedSeason> season) {}

    /**
     * How often things are looked at.
     *
     * @param poll how often a program looks for a run that waits
     * @param beat how often a working program says that it lives; dead after four missed
     * @param slice after how much search the best plan is kept in the store
     */
    public record Pace(Duration poll, Duration beat, Duration slice) {
        /** As a yard needs it. */
        public static final Pace USUAL = new Pace(Duration.ofSeconds(2), Duration.ofSeconds(5), Duration.ofSeconds(10));
    }

    /**
     * Ready to take runs from here on; say {@link #start} to take them.
     *
     * @param store the store
     * @param pace how often things are looked at
     * @param nanoClock a clock of nanoseconds
     */
    public SeasonJobs(Store store, Pace pace, LongSupplier nanoClock) {
        this.store = store;
        this.runs = new SeasonRuns(store);
        this.nanoClock = nanoClock;
        this.node = new SchedulerName.Hostname().getName() + " "
                + ProcessHandle.current().pid() + " "
                + UUID.randomUUID().toString().substring(0, 8);
        OneTimeTask<Void> task = Tasks.oneTime(TASK).execute((instance, context) -> run(instance.getId(), pace));
        SchedulerBuilder builder = Scheduler.create(store.writer(), task)
                .schedulerName(new SchedulerName.Fixed(node))
                .threads(1)
                .pollingInterval(pace.poll())
                .heartbeatInterval(pace.beat())
                .missedHeartbeatsLimit(MISSED_BEATS)
                .shutdownMaxWait(Duration.ofSeconds(1));
        if (store.address().isFile()) {
            builder.jdbcCustomization(new SqliteJobs());
        }
        this.scheduler = builder.build();
    }

    /** Begins to take runs. */
    public void start() {
        scheduler.start();
    }

    /**
     * Asks for a run.
     *
     * @param ask what is asked
     * @param by who asks
     * @return its id
     */
    public String ask(RunAsk ask, String by) {
        String id = runs.add(ask.text(), by);
        scheduler.scheduleIfNotExists(TASK.instance(id).scheduledTo(AT_ONCE));
        return id;
    }

    /**
     * One run.
     *
     * @param id of the run
     * @return how it stands, at whatever program it is worked on
     */
    public Optional<SeasonRun> one(String id) {
        return runs.one(id);
    }

    /**
     * How a run stands, without its plan, which may be megabytes.
     *
     * @param id of the run
     * @return its plan is empty where it has one; empty if there is no such run
     */
    public Optional<SeasonRun> head(String id) {
        return runs.head(id);
    }

    /**
     * The newest runs without their plans.
     *
     * @param most how many at most
     * @return the newest first
     */
    public List<SeasonRun> newest(int most) {
        return runs.newest(most);
    }

    /**
     * Asks that a run stops and keeps its best plan.
     *
     * @param id of the run
     */
    public void stop(String id) {
        runs.stop(id);
    }

    /**
     * The best plan of a run so far as it was kept, to the letter, judged again. Where this program made it, it is there at once.
     *
     * @param run a run with a plan
     * @return the season; empty if it has no plan yet
     * @throws BadInput if the yard has changed so that the plan is none any more
     */
    public Optional<PlannedSeason> planned(SeasonRun run) {
        String plan = run.plan();
        if (plan == null) {
            return Optional.empty();
        }
        Optional<PlannedSeason> made = made(run);
        if (made.isPresent()) {
            return made;
        }
        RunAsk ask = RunAsk.of(run.ask());
        Double bound = run.bound();
        PlannedSeason planned =
                PlanSeason.asKept(ask.on(store.shelf(run.by()), 1, ask.seed(), nanoClock), kept(run), bound);
        remember(run.id(), plan, planned);
        return Optional.of(planned);
    }

    /**
     * The best plan of a run so far where this program made it or looked it through lately.
     *
     * @param run a run
     * @return the season; empty if it is not at hand, or has no plan yet
     */
    public Optional<PlannedSeason> made(SeasonRun run) {
        Made known = made;
        return known != null && known.id().equals(run.id()) && known.plan().equals(run.plan())
                ? Optional.ofNullable(known.season().get())
                : Optional.empty();
    }

    private void remember(String id, String plan, PlannedSeason season) {
        made = new Made(id, plan, new SoftReference<>(season.packed()));
    }

    /**
     * Makes the best plan of a run the one that the yard works by.
     *
     * @param run a run with a plan
     * @param by who publishes it
     * @return what was published; empty if the run has no plan
     * @throws sternwright.app.files.shelf.EditConflict if another plan was published since the run was asked for; nothing has changed then
     * @throws IOException if the store refuses; nothing has changed then
     */
    public Optional<PlannedSeason> publish(SeasonRun run, String by) throws IOException {
        RunAsk ask = RunAsk.of(run.ask());
        Optional<PlannedSeason> planned = planned(run);
        if (planned.isPresent()) {
            PublishSeason.write(store.shelf(by), planned.get(), kept(run), ask.events(), ask.published());
        }
        return planned;
    }

    /**
     * What a run was asked.
     *
     * @param run a run
     * @return as it was asked for
     */
    public static RunAsk asked(SeasonRun run) {
        return RunAsk.of(run.ask());
    }

    /**
     * Why a run was refused, or, where it has a plan, why boats are not safe against frost in time in it.
     *
     * @param run a run
     * @return every problem; empty if it was not refused and every boat is safe
     */
    public static List<Problem> refused(SeasonRun run) {
        String why = run.refused();
        return why == null ? List.of() : List.of(JSON.readValue(why, Problem[].class));
    }

    private static List<Published> kept(SeasonRun run) {
        String plan = run.plan();
        if (plan == null) {
            return List.of();
        }
        return new TableFile("plan of the run", plan)
                .read(SeasonSheets.PLAN, LocalDate.MAX, new java.util.ArrayList<>()).stream()
                        .map(Sheet.Row::value)
                        .toList();
    }

    private void run(String id, Pace pace) {
        SeasonRun run = runs.one(id).orElse(null);
        if (run == null || run.ended()) {
            return;
        }
        runs.begin(id, node);
        Slices slices = new Slices(runs, run, node, pace.slice());
        try {
            Slices.Worked worked = slices.work(store.shelf(run.by()), kept(run), nanoClock);
            runs.one(id).map(SeasonRun::plan).ifPresent(plan -> remember(id, plan, worked.best()));
            List<Problem> unsafe = worked.best().unsafe(asked(run).seed(), PROOF_SECONDS);
            String why = unsafe.isEmpty() ? null : JSON.writeValueAsString(unsafe);
            runs.end(id, node, worked.stopped() ? SeasonRun.State.STOPPED : SeasonRun.State.DONE, "", why);
        } catch (BadInput noSeason) {
            String why = JSON.writeValueAsString(noSeason.problems());
            runs.end(id, node, SeasonRun.State.REFUSED, String.valueOf(noSeason.getMessage()), why);
        } catch (Slices.TakenOver another) {
            return;
        } catch (IllegalStateException fault) {
            LOG.error("a run of the season ended by a fault of the program", fault);
            runs.end(id, node, SeasonRun.State.FAILED, String.valueOf(fault.getMessage()), null);
        }
    }

    /** Stops taking runs; one under way is taken over by another program, or goes on when this one starts again. */
    @Override
    public void close() {
        scheduler.stop();
    }
}

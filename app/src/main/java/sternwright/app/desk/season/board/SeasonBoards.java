package sternwright.app.desk.season.board;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.ref.SoftReference;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.LongSupplier;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.desk.season.PlanSeason;
import sternwright.app.desk.season.PlannedSeason;
import sternwright.app.desk.season.SeasonAsk;
import sternwright.app.files.SeasonFiles;
import sternwright.app.files.SeasonFolder;
import sternwright.app.files.YardFiles;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.problem.Problem;
import sternwright.app.files.shelf.Kept;
import sternwright.app.files.shelf.Shelf;
import sternwright.season.dated.Published;
import sternwright.season.dated.answer.DatedSeason;

/**
 * The published season, judged once and kept as long as neither the plan nor what it rests on changes. Any number of threads may ask;
 * the first asking shows the plan as it is written and has it judged behind the asker.
 */
public final class SeasonBoards implements AutoCloseable {
    /** What a plan rests on beside boats and histories; work recorded since does not change the board of a plan. */
    private static final List<String> GROUND = List.of(
            SeasonFolder.RESOURCES,
            SeasonFolder.TIDES,
            SeasonFolder.DATES,
            SeasonFolder.PROMISES,
            SeasonFolder.AWAY,
            "yard.yaml");

    private static final Logger LOG = LoggerFactory.getLogger(SeasonBoards.class);

    /** A fault of the program itself: whoever looks must not be told for ever that the judges are at work. */
    private static final Problem NOT_JUDGED = new Problem(
            SeasonFolder.PLAN,
            0,
            "",
            "a plan that could not be looked through against the yard",
            "",
            "Plan the season again; the program's log says what went wrong.");

    private static final long QUICK_ENOUGH_MS = 700;

    private final OpenYard yard;
    private final LongSupplier nanoClock;
    private final ExecutorService judge = Executors.newSingleThreadExecutor(task -> {
        Thread thread = new Thread(task, "judging-season");
        thread.setDaemon(true);
        thread.setPriority(Thread.MIN_PRIORITY);
        return thread;
    });

    @Nullable
    private volatile Known known;

    private volatile SoftReference<PlannedSeason> made = new SoftReference<>(null);

    /** What was shown for a state of the yard; {@code key} says on what it rests. */
    private record Known(
            String state,
            LocalDate today,
            String key,
            @Nullable ShownSeason shown,
            Future<?> judging) {
        Known at(String otherState) {
            return new Known(otherState, today, key, shown, judging);
        }

        Known showing(ShownSeason other) {
            return new Known(state, today, key, other, judging);
        }
    }

    /**
     * Opens it; nothing is worked out yet.
     *
     * @param yard the yard
     * @param nanoClock a clock of nanoseconds
     */
    public SeasonBoards(OpenYard yard, LongSupplier nanoClock) {
        this.yard = yard;
        this.nanoClock = nanoClock;
    }

    /**
     * The plan the yard works by.
     *
     * @return empty if none is published
     * @throws BadInput if the season's texts cannot be read
     */
    public Optional<ShownSeason> published() {
        LocalDate today = yard.today();
        String state = yard.state();
        Known now = known;
        if (now == null || !now.state().equals(state) || !now.today().equals(today)) {
            now = look(state, today);
        }
        return Optional.ofNullable(now.shown());
    }

    private Known look(String state, LocalDate today) {
        Future<?> judging;
        synchronized (this) {
            Known before = known;
            Shelf shelf = yard.shelf("");
            String key = key(shelf, today);
            if (before != null && before.key().equals(key)) {
                known = before.at(state);
                return before;
            }
            Known next = read(shelf, state, today, key);
            known = next;
            judging = next.judging();
        }
        await(judging);
        Known after = known;
        return after == null ? look(state, today) : after;
    }

    private static void await(Future<?> judging) {
        try {
            judging.get(QUICK_ENOUGH_MS, TimeUnit.MILLISECONDS);
        } catch (TimeoutException later) {
            // The page asks again by itself.
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (ExecutionException e) {
            throw new IllegalStateException("the published season could not be judged", e.getCause());
        }
    }

    private static String key(Shelf shelf, LocalDate today) {
        try {
            StringBuilder key = new StringBuilder(today.toString());
            key.append(' ')
                    .append(shelf.kept(SeasonFolder.PLAN).map(Kept::version).orElse(""));
            for (String name : GROUND) {
                key.append(' ').append(shelf.kept(name).map(Kept::version).orElse(""));
            }
            return key.toString();
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + shelf.place(), e);
        }
    }

    private Known read(Shelf shelf, String state, LocalDate today, String key) {
        Kept plan = kept(shelf);
        SeasonFiles files = plan == null ? null : SeasonFolder.read(shelf, today);
        if (plan == null || files == null || files.published().isEmpty()) {
            return new Known(state, today, key, null, java.util.concurrent.CompletableFuture.completedFuture(""));
        }
        YardFiles all = yard.files();
        ShownSeason written = new ShownSeason(
                plan.version(),
                key,
                plan.by(),
                plan.at(),
                files.published().get(0).plannedOn(),
                RowsSeason.of(all, files),
                ShownSeason.Standing.JUDGING,
                List.of(),
                List.of(),
                new SoftReference<>(null));
        Future<?> judging = judge.submit(() -> judge(key, written, ask(shelf, today), all, files.published()));
        return new Known(state, today, key, written, judging);
    }

    private static @Nullable Kept kept(Shelf shelf) {
        try {
            return shelf.kept(SeasonFolder.PLAN).orElse(null);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + shelf.place(), e);
        }
    }

    private SeasonAsk ask(Shelf shelf, LocalDate today) {
        return new SeasonAsk(shelf, today, today, null, false, List.of(), 1, 1, nanoClock);
    }

    private void judge(String key, ShownSeason written, SeasonAsk ask, YardFiles all, List<Published> plan) {
        ShownSeason judged;
        try {
            PlannedSeason planned = planned(ask, all, plan);
            judged = with(written, planned.dated(), ShownSeason.Standing.HOLDS, List.of(), planned);
        } catch (BadInput broken) {
            judged = with(written, written.dated(), ShownSeason.Standing.BROKEN, broken.problems(), null);
        } catch (IllegalStateException refused) {
            Problem fault = new Problem(SeasonFolder.PLAN, 0, "", String.valueOf(refused.getMessage()), "", "");
            judged = with(written, written.dated(), ShownSeason.Standing.BROKEN, List.of(fault), null);
        } catch (RuntimeException fault) {
            LOG.error("the published season could not be looked through", fault);
            judged = with(written, written.dated(), ShownSeason.Standing.BROKEN, List.of(NOT_JUDGED), null);
        }
        synchronized (this) {
            Known now = known;
            if (now != null && now.key().equals(key)) {
                known = now.showing(judged);
            }
        }
    }

    /**
     * Says in which season the plan was made that was published just now: its visits need not be planned again to judge it.
     *
     * @param season the season
     */
    public void publishedFrom(PlannedSeason season) {
        made = new SoftReference<>(season);
    }

    private PlannedSeason planned(SeasonAsk ask, YardFiles all, List<Published> plan) {
        PlannedSeason of = made.get();
        if (of != null) {
            try {
                return PlanSeason.asKept(ask, of, plan);
            } catch (BadInput another) {
                made = new SoftReference<>(null);
            }
        }
        return PlanSeason.asKept(ask, all, plan, null);
    }

    private static ShownSeason with(
            ShownSeason written,
            DatedSeason dated,
            ShownSeason.Standing standing,
            List<Problem> wrong,
            @Nullable PlannedSeason planned) {
        return new ShownSeason(
                written.version(),
                written.ground(),
                written.by(),
                written.at(),
                written.visitsOf(),
                dated,
                standing,
                wrong,
                planned == null ? List.of() : planned.remarks(),
                new SoftReference<>(planned));
    }

    /**
     * The judged season behind a board with all it rests on; worked out anew where memory was short.
     *
     * @param shown the board
     * @return the season
     * @throws BadInput if the plan does not hold any more
     */
    public PlannedSeason whole(ShownSeason shown) {
        return shown.whole().orElseGet(() -> {
            LocalDate today = yard.today();
            Shelf shelf = yard.shelf("");
            List<Published> plan = SeasonFolder.read(shelf, today).published();
            return PlanSeason.asKept(ask(shelf, today), yard.files(), plan, null);
        });
    }

    /** Ends what is being worked out. */
    @Override
    public void close() {
        judge.shutdownNow();
    }
}

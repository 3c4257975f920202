package sternwright.app.desk.open;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import java.util.concurrent.locks.ReentrantLock;
import org.jspecify.annotations.Nullable;
import sternwright.app.files.FolderLayout;
import sternwright.app.files.YardFiles;
import sternwright.app.files.YardFolder;
import sternwright.app.files.YardSnapshot;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.problem.Problem;
import sternwright.app.files.shelf.FolderShelf;
import sternwright.app.files.shelf.Keeper;
import sternwright.app.files.shelf.Kept;
import sternwright.app.files.shelf.Shelf;
import sternwright.due.Due;
import sternwright.yard.Yard;

/**
 * A yard that stays open: what it says is kept, and read again only where a text has changed. Any number of threads may ask, and
 * any number of programs may write: what one has committed the others show at the next question.
 */
public final class OpenYard {
    /** A folder is looked at no more often: looking at thousands of files costs as much as a page. */
    private static final long LOOK_AT_A_FOLDER_EVERY_MS = 1000;

    private final Keeper keeper;
    private final Shelf shelf;
    private final Clock clock;
    private final long lookEveryMs;
    private final ReentrantLock reading = new ReentrantLock();

    @Nullable
    private volatile YardSnapshot known;

    @Nullable
    private volatile Sign sign;

    @Nullable
    private volatile Refusal refusal;

    private volatile LocalDate day = LocalDate.MIN;
    private volatile long lookedAt = Long.MIN_VALUE;
    private final AtomicReference<@Nullable YardSnapshot> unkept = new AtomicReference<>();
    private final OpenDues dues = new OpenDues();
    private final Semaphore news = new Semaphore(0);

    /**
     * Opens a yard; nothing is read yet.
     *
     * @param keeper keeps its texts
     * @param clock tells the day
     */
    public OpenYard(Keeper keeper, Clock clock) {
        this.keeper = keeper;
        this.shelf = keeper.shelf("");
        this.clock = clock;
        this.lookEveryMs = shelf instanceof FolderShelf ? LOOK_AT_A_FOLDER_EVERY_MS : 0;
    }

    /**
     * Opens a yard that is a folder; nothing is read yet.
     *
     * @param folder its folder
     * @param clock tells the day
     */
    public OpenYard(Path folder, Clock clock) {
        this(by -> new FolderShelf(folder), clock);
    }

    /**
     * The yard's texts, for deeds of one person. Say {@link #changed} after a deed that wrote.
     *
     * @param by who does it
     * @return a shelf; a store notes what is written on it under this name
     */
    public Shelf shelf(String by) {
        return keeper.shelf(by);
    }

    /**
     * The day.
     *
     * @return today by the clock of the yard
     */
    public LocalDate today() {
        return LocalDate.ofInstant(clock.instant(), clock.getZone());
    }

    /**
     * What the yard says now.
     *
     * @return all of it
     * @throws BadInput with every problem of every text
     */
    public YardFiles files() {
        return snapshot().files();
    }

    /**
     * The yard itself; where nothing was read yet, only its own text is read and no boat.
     *
     * @return name, units, uses
     * @throws BadInput with every problem of what was read
     */
    public Yard yard() {
        if (known != null) {
            return files().yard();
        }
        try {
            String version = shelf.kept(FolderLayout.YARD).map(Kept::version).orElse("");
            Sign before = sign;
            if (before == null || !before.version.equals(version)) {
                before = new Sign(version, YardFolder.yard(shelf, today()));
                sign = before;
            }
            return before.yard;
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + shelf.place(), e);
        }
    }

    private record Sign(String version, Yard yard) {}

    /**
     * What is due on every boat today.
     *
     * @return every work, the soonest first
     * @throws BadInput with every problem of every text
     */
    public List<Due> dues() {
        return dues.all(snapshot(), today());
    }

    /**
     * What is due on one boat today.
     *
     * @param boatId the boat
     * @return every work, the soonest first; none if there is no such boat
     * @throws BadInput with every problem of every text
     */
    public List<Due> dues(String boatId) {
        return dues.of(snapshot(), today(), boatId);
    }

    /**
     * What would be due on every boat today if the yard said something else.
     *
     * @param then what it would say; the boats as they are
     * @return every work, the soonest first
     * @throws BadInput with every problem of every text of the yard as it is
     */
    public List<Due> duesIf(YardFiles then) {
        return dues.ifSo(snapshot(), then, today());
    }

    /**
     * What changes whenever anything in the yard changes; good for caches of a page.
     *
     * @return a word to compare with an earlier one
     * @throws BadInput with every problem of every text
     */
    public String state() {
        return snapshot().state();
    }

    /**
     * Keeps what was read for the next start, which is then quicker. The answers are the same without it.
     *
     * @throws IOException if the keeper cannot be written; nothing is lost but time
     */
    public void keep() throws IOException {
        YardSnapshot first = unkept.getAndSet(null);
        if (first != null) {
            first.keep();
        }
        dues.keep(shelf);
    }

    /** To be said after a deed wrote: the next question looks at once. */
    public void changed() {
        lookedAt = Long.MIN_VALUE;
        news.release();
    }

    /**
     * Waits until a deed has changed something.
     *
     * @param mostMs milliseconds to wait at most
     * @throws InterruptedException if the thread is to end
     */
    public void awaitChange(long mostMs) throws InterruptedException {
        if (news.tryAcquire(mostMs, TimeUnit.MILLISECONDS)) {
            news.drainPermits();
        }
    }

    /**
     * Reads the yard and, where all boats would have to be gone through for what is due, does so before anybody asks.
     *
     * @throws BadInput with every problem of every text
     */
    public void readAhead() {
        dues.ahead(snapshot(), today());
    }

    /** What was wrong with a state of the texts: it is so as long as nothing changes, and need not be found again. */
    private record Refusal(String state, LocalDate day, List<Problem> problems) {}

    private YardSnapshot snapshot() {
        LocalDate today = today();
        YardSnapshot now = known;
        boolean justLooked = lookedAt > 0 && clock.millis() - lookedAt < lookEveryMs;
        Refusal wrong = refusal;
        if (wrong != null && justLooked && wrong.day.equals(today)) {
            throw new BadInput(wrong.problems);
        }
        if (now != null && wrong == null && day.equals(today) && justLooked) {
            return now;
        }
        try {
            if (now != null
                    && day.equals(today)
                    && lookEveryMs == 0
                    && shelf.state().equals(now.state())) {
                return now;
            }
            return read(today);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + shelf.place(), e);
        }
    }

    private YardSnapshot read(LocalDate today) throws IOException {
        reading.lock();
        try {
            long at = clock.millis();
            YardSnapshot before = known;
            YardSnapshot now = rightOrRefused(before, today, at);
            if (before == null) {
                dues.recall(shelf, now, today);
                unkept.set(now);
            }
            known = now;
            day = today;
            lookedAt = at;
            return now;
        } finally {
            reading.unlock();
        }
    }

    private YardSnapshot rightOrRefused(@Nullable YardSnapshot before, LocalDate today, long at) throws IOException {
        String state = shelf.state();
        Refusal wrong = refusal;
        if (wrong != null && wrong.state.equals(state) && wrong.day.equals(today)) {
            lookedAt = at;
            throw new BadInput(wrong.problems);
        }
        try {
            YardSnapshot now = before == null ? YardSnapshot.of(shelf, today) : before.next(shelf, today);
            refusal = null;
            return now;
        } catch (BadInput bad) {
            refusal = new Refusal(state, today, bad.problems());
            lookedAt = at;
            throw bad;
        }
    }
}

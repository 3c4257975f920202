package sternwright.app.desk.open;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.locks.ReentrantLock;
import org.jspecify.annotations.Nullable;
import sternwright.app.desk.due.DueWork;
import sternwright.app.files.YardFiles;
import sternwright.app.files.YardFolder;
import sternwright.app.files.problem.BadInput;
import sternwright.due.Due;

/** A yard that stays open: what it says is kept until its folder changes. Any number of threads may ask. */
public final class OpenYard {
    /** The folder is looked at no more often: looking at thousands of files costs as much as a page. */
    private static final long LOOK_EVERY_MS = 1000;

    private final Path folder;
    private final Clock clock;
    private final ReentrantLock reading = new ReentrantLock();

    @Nullable
    private volatile Known known;

    private volatile long lookedAt = Long.MIN_VALUE;

    /** What the folder said when it looked so; the dues of a day are worked out at the first asking. */
    private static final class Known {
        final long look;
        final YardFiles files;
        final LocalDate latest;

        @Nullable
        List<Due> dues;

        Known(long look, YardFiles files, LocalDate latest) {
            this.look = look;
            this.files = files;
            this.latest = latest;
        }
    }

    /**
     * Opens a yard; nothing is read yet.
     *
     * @param folder its folder
     * @param clock tells the day
     */
    public OpenYard(Path folder, Clock clock) {
        this.folder = folder;
        this.clock = clock;
    }

    /**
     * Where the yard lies, for deeds that write.
     *
     * @return its folder
     */
    public Path folder() {
        return folder;
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
     * What the yard's folder says now.
     *
     * @return all of it
     * @throws BadInput with every problem of every file
     */
    public YardFiles files() {
        return known().files;
    }

    /**
     * What is due on every boat today.
     *
     * @return every work on every part, the soonest first
     * @throws BadInput with every problem of every file
     */
    public List<Due> dues() {
        Known now = known();
        synchronized (now) {
            List<Due> dues = now.dues;
            if (dues == null) {
                dues = List.copyOf(new DueWork(now.files).all(now.latest));
                now.dues = dues;
            }
            return dues;
        }
    }

    /** To be said after a deed wrote into the folder: the next question reads it again. */
    public void changed() {
        lookedAt = Long.MIN_VALUE;
    }

    private Known known() {
        LocalDate today = today();
        Known now = known;
        if (now != null && now.latest.equals(today) && clock.millis() - lookedAt < LOOK_EVERY_MS && lookedAt > 0) {
            return now;
        }
        reading.lock();
        try {
            long look = look();
            now = known;
            if (now == null || now.look != look || !now.latest.equals(today)) {
                now = new Known(look, YardFolder.all(folder, today), today);
                known = now;
            }
            lookedAt = clock.millis();
            return now;
        } finally {
            reading.unlock();
        }
    }

    /** A number that changes when a file of the folder is written, added or taken away. */
    private long look() {
        long[] sum = {17};
        try {
            Files.walkFileTree(folder, new SimpleFileVisitor<>() {
                @Override
                public FileVisitResult preVisitDirectory(Path dir, BasicFileAttributes attributes) {
                    boolean hidden =
                            !dir.equals(folder) && dir.getFileName().toString().startsWith(".");
                    return hidden ? FileVisitResult.SKIP_SUBTREE : FileVisitResult.CONTINUE;
                }

                @Override
                public FileVisitResult visitFile(Path file, BasicFileAttributes a) {
                    long one = file.hashCode() * 31L + a.lastModifiedTime().toMillis() * 131L + a.size();
                    sum[0] += one * 0x9E3779B97F4A7C15L ^ (one >>> 29);
                    return FileVisitResult.CONTINUE;
                }
            });
        } catch (IOException e) {
            throw new UncheckedIOException("cannot look at " + folder, e);
        }
        return sum[0];
    }
}

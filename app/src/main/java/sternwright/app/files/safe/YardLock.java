package sternwright.app.files.safe;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.jspecify.annotations.Nullable;

/** Held while a yard's files are changed, so that two programs at once cannot lose each other's lines. */
public final class YardLock implements AutoCloseable {
    private static final String NAME = ".lock";
    private static final int TRIES = 100;
    private static final long PAUSE_MS = 50;

    private final FileChannel channel;
    private final FileLock lock;

    private YardLock(FileChannel channel, FileLock lock) {
        this.channel = channel;
        this.lock = lock;
    }

    /**
     * Waits up to five seconds for the yard, then finishes what a crash may have left.
     *
     * @param root the yard's folder
     * @return the lock; close it when all is written
     * @throws IOException if another program holds the yard or the disk refuses
     */
    public static YardLock take(Path root) throws IOException {
        FileChannel channel = FileChannel.open(root.resolve(NAME), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        for (int i = 0; i < TRIES; i++) {
            FileLock lock = tryLock(channel);
            if (lock != null) {
                StagedFiles.finish(root);
                return new YardLock(channel, lock);
            }
            pause();
        }
        channel.close();
        throw new IOException("another program is writing in " + root + ": wait until it is done and try again");
    }

    private static @Nullable FileLock tryLock(FileChannel channel) throws IOException {
        try {
            return channel.tryLock();
        } catch (OverlappingFileLockException heldInThisProgram) {
            return null;
        }
    }

    private static void pause() throws IOException {
        try {
            Thread.sleep(PAUSE_MS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException("interrupted while waiting for the yard", e);
        }
    }

    @Override
    public void close() throws IOException {
        lock.release();
        channel.close();
    }
}

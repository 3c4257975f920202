package sternwright.app.desk.derived;

import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * What takes long to make and is asked for again as it was: papers, sheets of the whole yard, long answers. It is made behind the
 * asker at low priority, two things at a time, so that the pages go on meanwhile; whoever asks for the same waits for the
 * same work. What was made lies on the disk, in a file of bounded length.
 */
public final class MadeOnce implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(MadeOnce.class);
    /** Also on one processor: a card to print does not wait for a thousand letters. */
    private static final int AT_ONCE = 2;

    private static final int MOST_WAITING = 40;
    private static final long BYTES_KEPT = 64L << 20;

    private final ScratchPad kept;
    private final ThreadPoolExecutor makers;
    private final Map<String, CompletableFuture<byte[]>> making = new HashMap<>();

    /** Ready to be asked. */
    public MadeOnce() {
        this(BYTES_KEPT, MOST_WAITING);
    }

    MadeOnce(long bytesKept, int mostWaiting) {
        kept = new ScratchPad(bytesKept);
        makers = new ThreadPoolExecutor(
                AT_ONCE, AT_ONCE, 1, TimeUnit.MINUTES, new ArrayBlockingQueue<>(mostWaiting), task -> {
                    Thread thread = new Thread(task, "making");
                    thread.setDaemon(true);
                    thread.setPriority(Thread.MIN_PRIORITY);
                    return thread;
                });
        makers.allowCoreThreadTimeOut(true);
    }

    /**
     * Anything that is bytes.
     *
     * @param what says what it is and everything it rests on: the state of the yard, the day, the reader's language
     * @param work makes it; asked only if it is not there
     * @return the bytes
     * @throws Busy if too much waits to be made
     */
    public byte[] of(String what, Supplier<byte[]> work) {
        byte[] there = known(what);
        return there != null ? there : made(what, work);
    }

    private byte @Nullable [] known(String what) {
        try {
            return kept.get(what);
        } catch (IOException e) {
            LOG.warn("what was made before cannot be read; it is made again", e);
            return null;
        }
    }

    private byte[] made(String what, Supplier<byte[]> work) {
        CompletableFuture<byte[]> answer;
        synchronized (making) {
            answer = making.get(what);
            if (answer == null) {
                byte[] meanwhile = known(what);
                if (meanwhile != null) {
                    return meanwhile;
                }
                answer = begin(what, work);
                making.put(what, answer);
            }
        }
        try {
            return answer.join();
        } catch (CompletionException e) {
            if (e.getCause() instanceof RuntimeException own) {
                throw own;
            }
            throw e;
        }
    }

    private CompletableFuture<byte[]> begin(String what, Supplier<byte[]> work) {
        try {
            return CompletableFuture.supplyAsync(() -> make(what, work), makers);
        } catch (RejectedExecutionException full) {
            throw new Busy(full);
        }
    }

    private byte[] make(String what, Supplier<byte[]> work) {
        try {
            byte[] made = work.get();
            keep(what, made);
            return made;
        } finally {
            synchronized (making) {
                making.remove(what);
            }
        }
    }

    private void keep(String what, byte[] made) {
        try {
            kept.put(what, made);
        } catch (IOException e) {
            LOG.warn("what was made cannot be kept; it is made again the next time", e);
        }
    }

    /** Ends what is being made. */
    @Override
    public void close() throws IOException {
        makers.shutdownNow();
        synchronized (making) {
            making.values().forEach(m -> m.cancel(false));
        }
        kept.close();
    }
}

package sternwright.app.serve;

import java.io.IOException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.ApplicationListener;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.files.problem.BadInput;

/**
 * Reads the yard and works out its due list once the pages are open, so that hardly anybody waits for it. Whoever asks earlier
 * waits for this very work: nothing is done twice.
 */
final class ReadAhead implements ApplicationListener<ApplicationReadyEvent>, AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(ReadAhead.class);

    /** The first page comes first. */
    private static final long AFTER_MS = 500;

    /** A new day's list is there soon after midnight. */
    private static final long AGAIN_MS = TimeUnit.MINUTES.toMillis(10);

    private final OpenYard yard;
    private final CountDownLatch closed = new CountDownLatch(1);

    ReadAhead(OpenYard yard) {
        this.yard = yard;
    }

    @Override
    public void onApplicationEvent(ApplicationReadyEvent open) {
        Thread reader = new Thread(this::read, "read-ahead");
        reader.setDaemon(true);
        reader.setPriority(Thread.MIN_PRIORITY);
        reader.start();
    }

    private void read() {
        try {
            long wait = AFTER_MS;
            while (!closed.await(wait, TimeUnit.MILLISECONDS)) {
                ahead();
                wait = AGAIN_MS;
            }
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
        } catch (IOException | RuntimeException e) {
            if (closed.getCount() > 0) {
                LOG.warn("the yard could not be read ahead; the first page that needs it reads it", e);
            }
        }
    }

    private void ahead() throws IOException {
        try {
            yard.files();
            yard.keep();
            yard.dues();
            yard.keep();
        } catch (BadInput wrong) {
            // The pages tell each reader what is wrong; whoever puts it right is spared the reading the next time.
            LOG.debug("the yard cannot be read", wrong);
        }
    }

    @Override
    public void close() {
        closed.countDown();
    }
}

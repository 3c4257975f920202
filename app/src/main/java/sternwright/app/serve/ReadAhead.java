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
 * Reads the yard and works out its due list once the pages are open, and again when a figure of a rule or the day has changed, so
 * that hardly anybody waits for it. Whoever asks earlier waits for this very work: nothing is done twice.
 */
final class ReadAhead implements ApplicationListener<ApplicationReadyEvent>, AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(ReadAhead.class);

    /** The first page comes first. */
    private static final long AFTER_MS = 500;

    /** A new day's list is there soon after midnight. */
    private static final long AGAIN_MS = TimeUnit.MINUTES.toMillis(10);

    /** A deed may write several texts. */
    private static final long SETTLES_MS = 100;

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
            closed.await(AFTER_MS, TimeUnit.MILLISECONDS);
            while (closed.getCount() > 0) {
                ahead();
                yard.awaitChange(AGAIN_MS);
                closed.await(SETTLES_MS, TimeUnit.MILLISECONDS);
            }
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
        }
    }

    private void ahead() {
        try {
            yard.files();
            yard.keep();
            yard.readAhead();
            yard.keep();
        } catch (BadInput wrong) {
            // The pages tell each reader what is wrong; whoever puts it right is spared the reading the next time.
            LOG.debug("the yard cannot be read", wrong);
        } catch (IOException | RuntimeException e) {
            if (closed.getCount() > 0) {
                LOG.warn("the yard could not be read ahead; the first page that needs it reads it", e);
            }
        }
    }

    @Override
    public void close() {
        closed.countDown();
        yard.changed();
    }
}

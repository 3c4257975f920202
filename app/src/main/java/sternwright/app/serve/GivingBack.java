package sternwright.app.serve;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.ApplicationListener;

/**
 * Gives memory back to the machine when nobody asks for anything: the program runs for months beside others, and its collector
 * gives back only what a whole collection frees. Nobody waits for it, for it is done in quiet moments alone.
 */
final class GivingBack implements ApplicationListener<ApplicationReadyEvent>, AutoCloseable {
    private static final long LOOK_EVERY_S = 4;

    /** What the program itself needs while it waits. */
    private static final long QUIET_BYTES = 2L << 20;

    /** Less is not worth a collection. */
    private static final long WORTH_BYTES = 16L << 20;

    private final CountDownLatch closed = new CountDownLatch(1);

    @Override
    public void onApplicationEvent(ApplicationReadyEvent open) {
        Thread watch = new Thread(this::watch, "giving-back");
        watch.setDaemon(true);
        watch.setPriority(Thread.MIN_PRIORITY);
        watch.start();
    }

    private void watch() {
        long left = 0;
        long before = used();
        try {
            while (!closed.await(LOOK_EVERY_S, TimeUnit.SECONDS)) {
                long now = used();
                if (Math.abs(now - before) < QUIET_BYTES && now > left + WORTH_BYTES) {
                    System.gc();
                    now = used();
                    left = now;
                }
                before = now;
            }
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
        }
    }

    private static long used() {
        Runtime machine = Runtime.getRuntime();
        return machine.totalMemory() - machine.freeMemory();
    }

    @Override
    public void close() {
        closed.countDown();
    }
}

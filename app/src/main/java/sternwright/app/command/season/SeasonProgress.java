package sternwright.app.command.season;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import sternwright.app.desk.season.Onlooker;
import sternwright.app.paper.Figures;

/** Says on the way how good the plan is; Ctrl-C stops the search and keeps the best so far. */
public final class SeasonProgress implements Onlooker {
    private static final long SAY_EVERY_NANOS = 2_000_000_000L;
    private static final long WAIT_SECONDS = 60;

    private final PrintWriter err;
    private final Figures figures;
    private final CountDownLatch done = new CountDownLatch(1);
    private volatile boolean stop;
    private long saidAt = Long.MIN_VALUE;
    private double said = Double.NaN;

    SeasonProgress(PrintWriter err, Figures figures) {
        this.err = err;
        this.figures = figures;
    }

    /** Until {@link #finished}, a request to end the program only ends the search. */
    Thread keepOnInterrupt() {
        Thread hook = new Thread(() -> {
            stop = true;
            try {
                done.await(WAIT_SECONDS, TimeUnit.SECONDS);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        });
        Runtime.getRuntime().addShutdownHook(hook);
        return hook;
    }

    /** All is shown and written; an end of the program is waited for no longer. */
    void finished(Thread hook) {
        done.countDown();
        if (!stop) {
            try {
                Runtime.getRuntime().removeShutdownHook(hook);
            } catch (IllegalStateException ending) {
                stop = true;
            }
        }
    }

    boolean stopped() {
        return stop;
    }

    @Override
    public void says(String what) {
        err.println(figures.dated(what));
        err.flush();
    }

    @Override
    public boolean goOn(double spent, double cost, double bound) {
        long now = System.nanoTime();
        if (saidAt == Long.MIN_VALUE || (now - saidAt > SAY_EVERY_NANOS && cost != said) || stop) {
            saidAt = now;
            said = cost;
            String better = cost <= 0
                    ? ""
                    : String.format(
                            Locale.ROOT, ", at most %.0f better (%.0f %%)", cost - bound, 100 * (cost - bound) / cost);
            says(String.format(
                    Locale.ROOT,
                    "%3.0f %% of the time: best %.0f, no plan below %.0f%s",
                    100 * spent,
                    cost,
                    bound,
                    better));
        }
        return !stop;
    }
}

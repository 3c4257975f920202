package sternwright.season.search;

import java.util.function.LongSupplier;

/** How long a search may go on: a number of iterations (repeatable), or a time on a clock that the caller brings. */
public final class Budget {
    private final long iterations;
    private final long nanos;
    private final LongSupplier clock;
    private final long began;

    private Budget(long iterations, long nanos, LongSupplier clock) {
        this.iterations = iterations;
        this.nanos = nanos;
        this.clock = clock;
        this.began = clock.getAsLong();
    }

    /** So many iterations in each thread: the same plan on every machine. */
    public static Budget iterations(long iterations) {
        return new Budget(Math.max(1, iterations), Long.MAX_VALUE, () -> 0);
    }

    /** So many seconds from now, on a clock of nanoseconds such as {@code System::nanoTime}. */
    public static Budget seconds(double seconds, LongSupplier nanoClock) {
        return new Budget(Long.MAX_VALUE, Math.max(1, (long) (seconds * 1e9)), nanoClock);
    }

    /** The spent part of the budget, from 0 to 1, after {@code done} iterations of the thread that asks. */
    public double spent(long done) {
        double byTime = (double) (clock.getAsLong() - began) / nanos;
        return Math.min(1, Math.max(byTime, (double) done / iterations));
    }

    /** Rounds in which to spend it, so that progress is seen about every {@code nanosPerRound}. */
    int rounds(long nanosPerRound) {
        long rounds = nanos == Long.MAX_VALUE ? iterations / 400 : nanos / nanosPerRound;
        return (int) Math.max(4, Math.min(400, rounds));
    }
}

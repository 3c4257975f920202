package sternwright.bench.serve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;

/**
 * A page asked at a steady rate.
 *
 * @param ms milliseconds of each answer from when it should have been asked for, in rising order
 * @param notAnswered how many answers were not the page, by what came instead
 */
record Steady(double[] ms, Map<String, Integer> notAnswered) {
    static Steady of(Desk desk, String path, int rate, int count) {
        double[] ms = new double[count];
        Map<String, Integer> other = new TreeMap<>();
        List<CompletableFuture<Void>> all = new ArrayList<>();
        long began = System.nanoTime() + 10_000_000;
        for (int i = 0; i < count; i++) {
            int n = i;
            long at = began + TimeUnit.SECONDS.toNanos(1) * i / rate;
            while (System.nanoTime() < at) {
                LockSupport.parkNanos(at - System.nanoTime());
            }
            all.add(desk.ask(path).handle((answer, trouble) -> {
                ms[n] = (System.nanoTime() - at) / 1e6;
                if (trouble != null || answer.statusCode() != 200) {
                    String instead = trouble == null ? "status " + answer.statusCode() : trouble.toString();
                    synchronized (other) {
                        other.merge(instead, 1, Integer::sum);
                    }
                }
                return null;
            }));
        }
        all.forEach(CompletableFuture::join);
        Arrays.sort(ms);
        return new Steady(ms, other);
    }

    /** Milliseconds within which a share of the answers came, 0 to 1. */
    double share(double share) {
        return ms[Math.max(0, (int) Math.ceil(share * ms.length) - 1)];
    }
}

package sternwright.app.account;

import java.time.Clock;
import java.time.Duration;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;

/**
 * Slows down whoever guesses passwords: five failures for a name or twenty from an address are free within a quarter of an
 * hour, then each further one doubles the wait, up to a quarter of an hour. Kept in the database, so that a restart or a
 * second node does not help. Figures: common practice, no source.
 */
@Repository
public class SignInLimit {
    /** Failures of one name that are free. */
    public static final int FREE_FOR_NAME = 5;
    /** Failures from one address that are free. */
    public static final int FREE_FOR_ADDRESS = 20;
    /** After so long without a failure the count begins anew; no wait is longer. */
    public static final Duration WINDOW = Duration.ofMinutes(15);

    private static final long FIRST_WAIT_MS = 15_000;

    private final JdbcClient jdbc;
    private final Clock clock;

    SignInLimit(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    /**
     * How long to wait before trying again.
     *
     * @param name the name typed
     * @param address where from
     * @return zero if trying is free
     */
    public Duration wait(String name, String address) {
        long byName = waitMs(forName(name), FREE_FOR_NAME);
        return Duration.ofMillis(Math.max(byName, waitMs(forAddress(address), FREE_FOR_ADDRESS)));
    }

    /**
     * How long an address has to wait that guesses links.
     *
     * @param address where from
     * @return zero if trying is free
     */
    public Duration wait(String address) {
        return Duration.ofMillis(waitMs(forAddress(address), FREE_FOR_ADDRESS));
    }

    /**
     * Counts a link that leads nowhere.
     *
     * @param address where from
     */
    @Transactional
    public void failed(String address) {
        count(forAddress(address));
    }

    /**
     * Counts a failure.
     *
     * @param name the name typed
     * @param address where from
     */
    @Transactional
    public void failed(String name, String address) {
        count(forName(name));
        count(forAddress(address));
    }

    /**
     * Forgets the failures of a name after it signed in; those of the address stay, for it may be guessing other names.
     *
     * @param name the name typed
     */
    public void signedIn(String name) {
        jdbc.sql("delete from sign_in_count where counted = ?")
                .param(forName(name))
                .update();
    }

    private void count(String counted) {
        long now = clock.millis();
        jdbc.sql("delete from sign_in_count where last_at < ?")
                .param(now - WINDOW.toMillis())
                .update();
        int changed = jdbc.sql("update sign_in_count set failures = failures + 1, last_at = ? where counted = ?")
                .params(now, counted)
                .update();
        if (changed == 0) {
            jdbc.sql("insert into sign_in_count (counted, failures, first_at, last_at) values (?, 1, ?, ?)"
                            + " on conflict (counted) do update set failures = sign_in_count.failures + 1")
                    .params(counted, now, now)
                    .update();
        }
    }

    private record Count(int failures, long lastAt) {}

    private long waitMs(String counted, int free) {
        return jdbc.sql("select failures, last_at from sign_in_count where counted = ?")
                .param(counted)
                .query((row, n) -> new Count(row.getInt(1), row.getLong(2)))
                .optional()
                .filter(c -> c.failures() >= free)
                .map(c -> c.lastAt() + length(c.failures() - free) - clock.millis())
                .filter(ms -> ms > 0)
                .orElse(0L);
    }

    private static long length(int beyond) {
        return Math.min(WINDOW.toMillis(), FIRST_WAIT_MS << Math.min(beyond, 10));
    }

    /** Names are hashed here, for people type their password into the wrong field. */
    private static String forName(String name) {
        return "name " + SecretWords.hash(Accounts.plain(name));
    }

    private static String forAddress(String address) {
        return "address " + address;
    }
}

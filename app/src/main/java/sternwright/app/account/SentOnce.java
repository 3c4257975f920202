package sternwright.app.account;

import java.io.IOException;
import java.time.Clock;
import java.time.Duration;
import java.util.Optional;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/**
 * Forms that are taken once. A form carries a key of its own; when it comes a second time, because the button was pressed twice or
 * the network sent it again, nothing is written a second time.
 */
@Repository
public class SentOnce {
    private static final Duration KEPT = Duration.ofDays(30);

    private final JdbcClient jdbc;
    private final Clock clock;

    SentOnce(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    /**
     * What a form does.
     *
     * @param <T> what comes of it
     */
    @FunctionalInterface
    public interface Deed<T> {
        /**
         * Does it.
         *
         * @return what came of it
         * @throws IOException if what keeps the yard refuses
         */
        T done() throws IOException;
    }

    /**
     * Does what a form says, unless this form has been taken before. If the deed fails, the form may come again.
     *
     * @param key the form's own key; anything that is no such key is as good as a new one
     * @param accountId who sent it
     * @param deed what it does
     * @param <T> what comes of it
     * @return what came of it, empty if the form had been taken before
     * @throws IOException if what keeps the yard refuses
     */
    public <T> Optional<T> take(String key, String accountId, Deed<T> deed) throws IOException {
        String own = known(key);
        if (!begin(own, accountId)) {
            return Optional.empty();
        }
        boolean done = false;
        try {
            T came = deed.done();
            done = true;
            return Optional.of(came);
        } finally {
            if (!done) {
                jdbc.sql("delete from sent_once where sent_key = ?").param(own).update();
            }
        }
    }

    private boolean begin(String key, String accountId) {
        jdbc.sql("delete from sent_once where at < ?")
                .param(clock.millis() - KEPT.toMillis())
                .update();
        return jdbc.sql("insert into sent_once (sent_key, account_id, at) values (?, ?, ?) on conflict do nothing")
                        .params(key, accountId, clock.millis())
                        .update()
                == 1;
    }

    private static String known(String key) {
        try {
            return UUID.fromString(key).toString();
        } catch (IllegalArgumentException none) {
            return UUID.randomUUID().toString();
        }
    }
}

package sternwright.app.web.tables;

import java.time.Clock;
import java.time.Duration;
import java.util.Optional;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Tables that were looked at and wait for a yes. Each can be taken once, by whoever sent it. */
@Repository
public class Drafts {
    private static final Duration KEPT = Duration.ofDays(1);

    private final JdbcClient jdbc;
    private final Clock clock;

    Drafts(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    /**
     * A table that waits.
     *
     * @param kind boats, hours or history
     * @param name of its file
     * @param content CSV
     */
    record Draft(String kind, String name, String content) {}

    String keep(String accountId, Draft draft) {
        jdbc.sql("delete from table_draft where at < ?")
                .param(clock.millis() - KEPT.toMillis())
                .update();
        String id = UUID.randomUUID().toString();
        jdbc.sql("insert into table_draft (id, account_id, kind, name, content, at) values (?, ?, ?, ?, ?, ?)")
                .params(id, accountId, draft.kind(), draft.name(), draft.content(), clock.millis())
                .update();
        return id;
    }

    Optional<Draft> find(String id, String accountId) {
        return jdbc.sql("select kind, name, content from table_draft where id = ? and account_id = ?")
                .params(id, accountId)
                .query((row, n) -> new Draft(row.getString(1), row.getString(2), row.getString(3)))
                .optional();
    }

    void drop(String id, String accountId) {
        jdbc.sql("delete from table_draft where id = ? and account_id = ?")
                .params(id, accountId)
                .update();
    }
}

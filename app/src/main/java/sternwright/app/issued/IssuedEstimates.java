package sternwright.app.issued;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;

/** Estimates as they were made, each with one link at most; links are known by the hash of their secret alone. */
@Repository
public class IssuedEstimates {
    private static final String ONE =
            "select id, content, made_at, made_by, secret_hash, expires_at, withdrawn_at, answered_at,"
                    + " answered_by, recorded_at from estimate ";

    private final JdbcClient jdbc;
    private final Clock clock;

    IssuedEstimates(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    /**
     * Keeps an estimate; it has no link yet.
     *
     * @param offered the estimate
     * @param by who made it
     * @return its name in the yard's own addresses
     */
    public String keep(OfferedEstimate offered, String by) {
        String id = UUID.randomUUID().toString();
        jdbc.sql(
                        "insert into estimate (id, boat_id, boat_name, content, made_at, made_by, expires_at) values (?, ?, ?, ?, ?,"
                                + " ?, 0)")
                .params(
                        id,
                        offered.estimate().boat().id(),
                        offered.estimate().boat().name(),
                        IssuedText.of(offered),
                        clock.millis(),
                        by)
                .update();
        return id;
    }

    /**
     * Gives an estimate a new link; an older one stops working at once.
     *
     * @param id the estimate
     * @param secretHash hash of the secret of the link
     * @param expires when it stops working
     * @return false if the estimate is answered already or not there
     */
    public boolean link(String id, String secretHash, Instant expires) {
        return jdbc.sql(
                                "update estimate set secret_hash = ?, expires_at = ?, withdrawn_at = null where id = ? and answered_at is"
                                        + " null")
                        .params(secretHash, expires.toEpochMilli(), id)
                        .update()
                == 1;
    }

    /**
     * Withdraws the link of an estimate.
     *
     * @param id the estimate
     * @return false if there was no link to withdraw
     */
    public boolean withdraw(String id) {
        return jdbc.sql(
                                "update estimate set withdrawn_at = ? where id = ? and withdrawn_at is null and secret_hash is not null")
                        .params(clock.millis(), id)
                        .update()
                == 1;
    }

    /**
     * An estimate by its name.
     *
     * @param id the name
     * @return empty if there is none
     */
    public Optional<IssuedEstimate> find(String id) {
        return one(jdbc.sql(ONE + "where id = ?").param(id));
    }

    /**
     * The estimate of a link, also if the link has had its time.
     *
     * @param secretHash hash of the secret
     * @return empty if no link has this secret
     */
    public Optional<IssuedEstimate> bySecret(String secretHash) {
        return one(jdbc.sql(ONE + "where secret_hash = ?").param(secretHash));
    }

    /**
     * Keeps the owner's answer; only the first one is.
     *
     * @param id the estimate
     * @param by the name the owner wrote
     * @param accepted answers by line
     * @return false if it was answered already, or its link does not work any more; nothing is written then
     */
    @Transactional
    public boolean answer(String id, String by, Map<Integer, Boolean> accepted) {
        int first = jdbc.sql("update estimate set answered_at = ?, answered_by = ? where id = ? and answered_at is null"
                        + " and withdrawn_at is null and expires_at > ?")
                .params(clock.millis(), by, id, clock.millis())
                .update();
        if (first != 1) {
            return false;
        }
        accepted.forEach(
                (line, yes) -> jdbc.sql("insert into estimate_answer (estimate_id, line, accepted) values (?, ?, ?)")
                        .params(id, line, yes)
                        .update());
        return true;
    }

    /**
     * Notes that the refusals of an answer are on record.
     *
     * @param id the estimate
     */
    public void recorded(String id) {
        jdbc.sql("update estimate set recorded_at = ? where id = ? and recorded_at is null")
                .params(clock.millis(), id)
                .update();
    }

    /**
     * Estimates, the newest first.
     *
     * @param boatId of this boat; null for all
     * @param from how many newer ones to leave out
     * @param most how many at most
     * @return the estimates
     */
    public List<IssuedEstimate> lines(@Nullable String boatId, int from, int most) {
        return all(jdbc.sql(ONE + "where ? = '' or boat_id = ? order by made_at desc, id limit ? offset ?")
                .params(boatId == null ? "" : boatId, boatId == null ? "" : boatId, most, from));
    }

    /**
     * How many estimates there are.
     *
     * @return at least 0
     */
    public long count() {
        return jdbc.sql("select count(*) from estimate").query(Long.class).single();
    }

    private Optional<IssuedEstimate> one(JdbcClient.StatementSpec asked) {
        return all(asked).stream().findFirst();
    }

    /** The answers are asked for once the estimates are read: a second question inside the first would need a second connection. */
    private List<IssuedEstimate> all(JdbcClient.StatementSpec asked) {
        List<IssuedEstimate> found = asked.query((row, n) -> estimate(row)).list();
        Map<String, Map<Integer, Boolean>> answers = answers(found.stream()
                .filter(e -> e.answeredAt() != null)
                .map(IssuedEstimate::id)
                .toList());
        return found.stream()
                .map(e -> e.with(answers.getOrDefault(e.id(), Map.of())))
                .toList();
    }

    private static IssuedEstimate estimate(ResultSet row) throws SQLException {
        return new IssuedEstimate(
                row.getString(1),
                IssuedText.read(row.getString(2), OfferedEstimate.class),
                Instant.ofEpochMilli(row.getLong(3)),
                row.getString(4),
                row.getString(5) != null,
                Instant.ofEpochMilli(row.getLong(6)),
                time(row, 7),
                time(row, 8),
                row.getString(9),
                time(row, 10),
                Map.of());
    }

    private Map<String, Map<Integer, Boolean>> answers(List<String> ids) {
        Map<String, Map<Integer, Boolean>> answers = new HashMap<>();
        if (!ids.isEmpty()) {
            jdbc.sql("select estimate_id, line, accepted from estimate_answer where estimate_id in (:ids)")
                    .param("ids", ids)
                    .query(row -> {
                        answers.computeIfAbsent(row.getString(1), id -> new HashMap<>())
                                .put(row.getInt(2), row.getBoolean(3));
                    });
        }
        return answers;
    }

    private static @Nullable Instant time(ResultSet row, int column) throws SQLException {
        long at = row.getLong(column);
        return row.wasNull() ? null : Instant.ofEpochMilli(at);
    }
}

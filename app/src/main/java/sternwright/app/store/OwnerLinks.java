package sternwright.app.store;

import java.io.IOException;
import java.security.SecureRandom;
import java.time.Duration;
import java.time.Instant;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.DataSourceTransactionManager;
import org.springframework.transaction.TransactionException;
import org.springframework.transaction.support.TransactionTemplate;
import sternwright.app.files.problem.BadInput;

/**
 * Private links by which an owner reads an estimate and accepts or refuses each line, once, with name and time. What the works
 * of a refused line mean for safety is recorded in the boat's history by the desk.
 */
public final class OwnerLinks {
    private static final SecureRandom RANDOM = new SecureRandom();
    private static final int SECRET_BYTES = 24;
    private static final int LONGEST_NAME = 120;
    private static final int LONGEST_NOTE = 1000;
    private static final String FACTS =
            "secret_hash, boat_id, visit, estimate, made_by, made_at, expires_at, withdrawn_at, answered_at";

    private final Store store;
    private final JdbcClient read;
    private final JdbcClient write;
    private final TransactionTemplate together;

    OwnerLinks(Store store) {
        this.store = store;
        this.read = JdbcClient.create(store.reader());
        this.write = JdbcClient.create(store.writer());
        this.together = new TransactionTemplate(new DataSourceTransactionManager(store.writer()));
    }

    /**
     * A link.
     *
     * @param key by which the office knows it; not the secret
     * @param boatId the boat
     * @param visit which visit, as the plan calls it
     * @param estimate what was sent, as the desk writes it
     * @param by who sent it
     * @param at when
     * @param expires when it stops working
     * @param withdrawn when the office took it back, null if it did not
     * @param answered when the owner answered, null if not yet
     */
    public record OwnerLink(
            String key,
            String boatId,
            String visit,
            String estimate,
            String by,
            Instant at,
            Instant expires,
            @Nullable Instant withdrawn,
            @Nullable Instant answered) {
        /**
         * Whether an owner may still answer.
         *
         * @param now the time
         * @return true until it was answered, withdrawn or is too old
         */
        public boolean open(Instant now) {
            return withdrawn == null && answered == null && now.isBefore(expires);
        }
    }

    /**
     * What an owner said of one line.
     *
     * @param line the line, as the estimate names it
     * @param accepted true if it shall be done
     * @param name who said so, as typed
     * @param at when
     * @param note free text, may be empty
     */
    public record OwnerAnswer(String line, boolean accepted, String name, Instant at, String note) {}

    /**
     * Makes a link.
     *
     * @param boatId the boat
     * @param visit which visit
     * @param estimate what is sent
     * @param by who sends it
     * @param life how long it works
     * @return the secret that goes into the address; it cannot be had again
     * @throws IOException if the store refuses
     */
    public String make(String boatId, String visit, String estimate, String by, Duration life) throws IOException {
        byte[] bytes = new byte[SECRET_BYTES];
        RANDOM.nextBytes(bytes);
        String secret = Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
        long now = store.clock().millis();
        try {
            write.sql("insert into owner_link (" + FACTS + ") values (?, ?, ?, ?, ?, ?, ?, null, null)")
                    .params(Chain.of(secret), boatId, visit, estimate, by, now, now + life.toMillis())
                    .update();
            return secret;
        } catch (DataAccessException e) {
            throw StoreTrouble.of(store.place(), e);
        }
    }

    /**
     * The link of a secret, whether it is still open or not.
     *
     * @param secret from the address
     * @return the link; empty if there is none
     */
    public Optional<OwnerLink> bySecret(String secret) {
        return read.sql("select " + FACTS + " from owner_link where secret_hash = ?")
                .param(Chain.of(secret))
                .query(OwnerLinks::link)
                .optional();
    }

    /**
     * The links of a boat, the newest first.
     *
     * @param boatId the boat
     * @return her links
     */
    public List<OwnerLink> of(String boatId) {
        return read.sql("select " + FACTS + " from owner_link where boat_id = ? order by made_at desc")
                .param(boatId)
                .query(OwnerLinks::link)
                .list();
    }

    /**
     * What was answered on a link.
     *
     * @param key of the link
     * @return the answers in the order of the lines' names; none if it was not answered
     */
    public List<OwnerAnswer> answers(String key) {
        return read.sql(
                        "select line, accepted, said_by, at, note from owner_answer where secret_hash = ? order by line")
                .param(key)
                .query((row, n) -> new OwnerAnswer(
                        row.getString(1),
                        row.getBoolean(2),
                        row.getString(3),
                        Instant.ofEpochMilli(row.getLong(4)),
                        row.getString(5)))
                .list();
    }

    /**
     * Answers all lines at once. A link is answered once: whoever sends the same answer again changes nothing.
     *
     * @param secret from the address
     * @param accepted true or false by line
     * @param name who answers, as typed
     * @param note free text, may be empty
     * @return the link as it was before the answer
     * @throws BadInput if there is no such link, or it was answered, withdrawn or is too old
     * @throws IOException if the store refuses; nothing was written
     */
    public OwnerLink answer(String secret, Map<String, Boolean> accepted, String name, String note) throws IOException {
        if (name.isBlank()) {
            throw BadInput.of("name", "your name is missing", "the name of who answers", "Type your name.");
        }
        try {
            return java.util.Objects.requireNonNull(together.execute(t -> written(secret, accepted, name, note)));
        } catch (DataAccessException | TransactionException e) {
            throw StoreTrouble.of(store.place(), e);
        }
    }

    private OwnerLink written(String secret, Map<String, Boolean> accepted, String name, String note) {
        long now = store.clock().millis();
        String key = Chain.of(secret);
        int taken = write.sql("update owner_link set answered_at = ? where secret_hash = ? and answered_at is null"
                        + " and withdrawn_at is null and expires_at > ?")
                .params(now, key, now)
                .update();
        OwnerLink link = write.sql("select " + FACTS + " from owner_link where secret_hash = ?")
                .param(key)
                .query(OwnerLinks::link)
                .optional()
                .orElseThrow(() -> BadInput.of("link", "there is no such link", "", "Ask the yard for a new one."));
        if (taken == 0) {
            String why = link.withdrawn() != null
                    ? "the yard has taken this estimate back"
                    : link.answered() != null ? "this estimate was answered already" : "this estimate is too old";
            throw BadInput.of("link", why, "", "Ask the yard for a new one.");
        }
        accepted.forEach(
                (line, yes) -> write.sql("insert into owner_answer (secret_hash, line, accepted, said_by, at, note)"
                                + " values (?, ?, ?, ?, ?, ?)")
                        .params(key, line, yes, cut(name.strip(), LONGEST_NAME), now, cut(note, LONGEST_NOTE))
                        .update());
        return link;
    }

    /**
     * Takes a link back that was not answered.
     *
     * @param key of the link
     * @return false if it was answered or taken back already
     * @throws IOException if the store refuses
     */
    public boolean withdraw(String key) throws IOException {
        try {
            return write.sql("update owner_link set withdrawn_at = ?"
                                    + " where secret_hash = ? and answered_at is null and withdrawn_at is null")
                            .params(store.clock().millis(), key)
                            .update()
                    == 1;
        } catch (DataAccessException e) {
            throw StoreTrouble.of(store.place(), e);
        }
    }

    private static OwnerLink link(java.sql.ResultSet row, int number) throws java.sql.SQLException {
        return new OwnerLink(
                row.getString(1),
                row.getString(2),
                row.getString(3),
                row.getString(4),
                row.getString(5),
                Instant.ofEpochMilli(row.getLong(6)),
                Instant.ofEpochMilli(row.getLong(7)),
                instant(row, 8),
                instant(row, 9));
    }

    private static @Nullable Instant instant(java.sql.ResultSet row, int column) throws java.sql.SQLException {
        long ms = row.getLong(column);
        return row.wasNull() ? null : Instant.ofEpochMilli(ms);
    }

    private static String cut(String text, int most) {
        return text.length() <= most ? text : text.substring(0, most);
    }
}

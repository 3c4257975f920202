package sternwright.app.account;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Tokens by which other programs ask in a person's name. A token may do what the person may, as long as the person may. */
@Repository
public class ApiTokens {
    /** How long a token works. */
    public static final Duration LIFE = Duration.ofDays(365);

    private final JdbcClient jdbc;
    private final Accounts accounts;
    private final Clock clock;

    ApiTokens(JdbcClient jdbc, Accounts accounts, Clock clock) {
        this.jdbc = jdbc;
        this.accounts = accounts;
        this.clock = clock;
    }

    /** What a token opens. */
    public enum Kind {
        /** Everything under {@code /api}. */
        PROGRAM,
        /** Calendars alone: their addresses are kept by programs that cannot keep a secret well. */
        CALENDAR
    }

    /**
     * A token as its owner sees it again: never its secret.
     *
     * @param id its id
     * @param kind what it opens
     * @param name what it is for
     * @param createdAt when it was made
     * @param expiresAt when it stops working
     * @param usedOn the last day it was used, null if never
     */
    public record Token(
            String id,
            Kind kind,
            String name,
            Instant createdAt,
            Instant expiresAt,
            @Nullable LocalDate usedOn) {}

    /**
     * Makes a token.
     *
     * @param accountId whose
     * @param kind what it opens
     * @param name what it is for
     * @return its secret, shown once and kept as a hash only
     */
    public String make(String accountId, Kind kind, String name) {
        String secret = SecretWords.make();
        jdbc.sql("insert into api_token (id, account_id, token_hash, kind, name, created_at, expires_at, used_on)"
                        + " values (?, ?, ?, ?, ?, ?, ?, null)")
                .params(
                        UUID.randomUUID().toString(),
                        accountId,
                        SecretWords.hash(secret),
                        kind.name(),
                        name.strip(),
                        clock.millis(),
                        clock.millis() + LIFE.toMillis())
                .update();
        return secret;
    }

    /**
     * Who asks with a secret.
     *
     * @param secret as it was sent
     * @param kind what it is to open
     * @return the person; empty if the token is unknown, of another kind, too old or withdrawn, or the account is locked
     */
    public Optional<SignedIn> person(String secret, Kind kind) {
        String hash = SecretWords.hash(secret);
        Optional<SignedIn> person = jdbc.sql(
                        "select account_id from api_token where token_hash = ? and kind = ? and expires_at > ?")
                .params(hash, kind.name(), clock.millis())
                .query(String.class)
                .optional()
                .flatMap(accounts::byId)
                .filter(a -> !a.locked())
                .map(a -> new SignedIn(a, null));
        person.ifPresent(p -> used(hash));
        return person;
    }

    /** One write a day and token, not one a request. */
    private void used(String hash) {
        String today = LocalDate.ofInstant(clock.instant(), clock.getZone()).toString();
        boolean noted = jdbc.sql("select count(*) from api_token where token_hash = ? and used_on = ?")
                        .params(hash, today)
                        .query(Long.class)
                        .single()
                > 0;
        if (!noted) {
            jdbc.sql("update api_token set used_on = ? where token_hash = ?")
                    .params(today, hash)
                    .update();
        }
    }

    /**
     * The tokens of a person.
     *
     * @param accountId the person
     * @return tokens, the newest first
     */
    public List<Token> of(String accountId) {
        return jdbc.sql("select id, kind, name, created_at, expires_at, used_on from api_token"
                        + " where account_id = ? order by created_at desc, id")
                .param(accountId)
                .query(ApiTokens::token)
                .list();
    }

    /**
     * Withdraws a token; it stops working at once.
     *
     * @param accountId whose it must be
     * @param id the token
     * @return false if the person has no such token
     */
    public boolean withdraw(String accountId, String id) {
        return jdbc.sql("delete from api_token where account_id = ? and id = ?")
                        .params(accountId, id)
                        .update()
                == 1;
    }

    private static Token token(ResultSet row, int number) throws SQLException {
        String used = row.getString("used_on");
        return new Token(
                row.getString("id"),
                Kind.valueOf(row.getString("kind")),
                row.getString("name"),
                Instant.ofEpochMilli(row.getLong("created_at")),
                Instant.ofEpochMilli(row.getLong("expires_at")),
                used == null ? null : LocalDate.parse(used));
    }
}

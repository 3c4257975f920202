package sternwright.app.account;

import java.time.Clock;
import java.time.Duration;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;

/** Links by which a person sets a password: each works once and for three days. */
@Repository
public class OneTimeLinks {
    /** How long a link works. */
    public static final Duration LIFE = Duration.ofDays(3);

    private final JdbcClient jdbc;
    private final Accounts accounts;
    private final Clock clock;

    OneTimeLinks(JdbcClient jdbc, Accounts accounts, Clock clock) {
        this.jdbc = jdbc;
        this.accounts = accounts;
        this.clock = clock;
    }

    /**
     * Makes a link for an account; older ones of the account stop working.
     *
     * @param accountId the account
     * @return the secret of the link, shown once and kept as a hash only
     */
    @Transactional
    public String make(String accountId) {
        jdbc.sql("delete from one_time_link where account_id = ?")
                .param(accountId)
                .update();
        String secret = SecretWords.make();
        jdbc.sql("insert into one_time_link (token_hash, account_id, expires_at, used_at) values (?, ?, ?, null)")
                .params(SecretWords.hash(secret), accountId, clock.millis() + LIFE.toMillis())
                .update();
        return secret;
    }

    /**
     * Whose link it is, as long as it works.
     *
     * @param secret the secret of the link
     * @return the account; empty if the link is unknown, used or too old, or the account is locked
     */
    public Optional<Account> account(String secret) {
        return jdbc.sql(
                        "select account_id from one_time_link where token_hash = ? and used_at is null and expires_at > ?")
                .params(SecretWords.hash(secret), clock.millis())
                .query(String.class)
                .optional()
                .flatMap(accounts::byId)
                .filter(a -> !a.locked());
    }

    /**
     * Uses a link up and sets the password.
     *
     * @param secret the secret of the link
     * @param password the new password
     * @return the account; empty if the link did not work, also if it was used a moment ago
     */
    @Transactional
    public Optional<Account> use(String secret, String password) {
        Optional<Account> account = account(secret);
        if (account.isEmpty() || markUsed(secret) != 1) {
            return Optional.empty();
        }
        accounts.setPassword(account.get().id(), password);
        return account;
    }

    private int markUsed(String secret) {
        return jdbc.sql("update one_time_link set used_at = ? where token_hash = ? and used_at is null")
                .params(clock.millis(), SecretWords.hash(secret))
                .update();
    }
}

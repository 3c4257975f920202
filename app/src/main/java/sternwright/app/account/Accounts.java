package sternwright.app.account;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.springframework.dao.ConcurrencyFailureException;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.TransactionDefinition;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.transaction.support.TransactionTemplate;

/** The accounts of a yard. */
@Repository
public class Accounts {
    private static final String COLUMNS =
            "select id, name, full_name, role, password, locked, created_at, version from account ";

    private final JdbcClient jdbc;
    private final PasswordEncoder hash;
    private final Clock clock;
    private final TransactionTemplate alone;
    private volatile boolean someoneIsThere;

    /**
     * Accounts in a database.
     *
     * @param jdbc the database
     * @param hash turns passwords into hashes
     * @param clock tells when an account was made
     * @param transactions of the database
     */
    public Accounts(JdbcClient jdbc, PasswordEncoder hash, Clock clock, PlatformTransactionManager transactions) {
        this.jdbc = jdbc;
        this.hash = hash;
        this.clock = clock;
        this.alone = new TransactionTemplate(transactions);
        this.alone.setIsolationLevel(TransactionDefinition.ISOLATION_SERIALIZABLE);
    }

    /**
     * Whether the first account was made.
     *
     * @return true from then on
     */
    public boolean any() {
        if (!someoneIsThere) {
            someoneIsThere =
                    jdbc.sql("select count(*) from account").query(Long.class).single() > 0;
        }
        return someoneIsThere;
    }

    /**
     * Everybody, by name.
     *
     * @return the accounts
     */
    public List<Account> all() {
        return jdbc.sql(COLUMNS + "order by full_name, name")
                .query(Accounts::account)
                .list();
    }

    /**
     * One account.
     *
     * @param id its id
     * @return the account, empty if there is none
     */
    public Optional<Account> byId(String id) {
        return jdbc.sql(COLUMNS + "where id = ?")
                .param(id)
                .query(Accounts::account)
                .optional();
    }

    /**
     * The account of a name.
     *
     * @param name as typed
     * @return the account, empty if there is none
     */
    public Optional<Account> byName(String name) {
        return jdbc.sql(COLUMNS + "where name = ?")
                .param(plain(name))
                .query(Accounts::account)
                .optional();
    }

    /** The hash of an account's password; empty if none was set. */
    Optional<String> passwordHash(String id) {
        return jdbc.sql("select password from account where id = ? and password is not null")
                .param(id)
                .query(String.class)
                .optional();
    }

    /**
     * Makes the first account, the owner's, who manages. Of several who try at once, on whatever nodes, one does.
     *
     * @param name what will be typed to sign in
     * @param fullName as others read it
     * @param password the password
     * @return the account, empty if somebody was first
     */
    public Optional<Account> first(String name, String fullName, String password) {
        String hashed = Objects.requireNonNull(hash.encode(password));
        try {
            return Objects.requireNonNullElse(
                    alone.execute(own -> firstAlone(name, fullName, hashed)), Optional.<Account>empty());
        } catch (ConcurrencyFailureException another) {
            return Optional.empty();
        }
    }

    private Optional<Account> firstAlone(String name, String fullName, String hashed) {
        if (any()) {
            return Optional.empty();
        }
        Optional<Account> made = add(name, fullName, Role.MANAGER);
        made.ifPresent(a -> setHash(a.id(), hashed));
        return made.flatMap(a -> byId(a.id()));
    }

    /**
     * Adds a person, who cannot sign in before a password is set.
     *
     * @param name what will be typed to sign in
     * @param fullName as others read it
     * @param role what the person may do
     * @return the account, empty if the name is taken
     */
    @Transactional
    public Optional<Account> add(String name, String fullName, Role role) {
        if (byName(name).isPresent()) {
            return Optional.empty();
        }
        String id = UUID.randomUUID().toString();
        try {
            jdbc.sql("insert into account (id, name, full_name, role, password, locked, created_at, version)"
                            + " values (?, ?, ?, ?, null, false, ?, 1)")
                    .params(id, plain(name), fullName.strip(), role.name(), clock.millis())
                    .update();
        } catch (DuplicateKeyException taken) {
            return Optional.empty();
        }
        return byId(id);
    }

    /**
     * Changes what a person is called and may do, and whether signing in is refused.
     *
     * @param before the account as it was read
     * @param fullName the new name
     * @param role the new role
     * @param locked whether signing in is refused
     * @return false if somebody else changed the account in between; nothing is changed then
     */
    public boolean change(Account before, String fullName, Role role, boolean locked) {
        return jdbc.sql("update account set full_name = ?, role = ?, locked = ?, version = version + 1"
                                + " where id = ? and version = ?")
                        .params(fullName.strip(), role.name(), locked, before.id(), before.version())
                        .update()
                == 1;
    }

    /**
     * Sets a password; the one before is forgotten.
     *
     * @param id the account
     * @param password the password
     */
    public void setPassword(String id, String password) {
        setHash(id, Objects.requireNonNull(hash.encode(password)));
    }

    private void setHash(String id, String hashed) {
        jdbc.sql("update account set password = ?, version = version + 1 where id = ?")
                .params(hashed, id)
                .update();
    }

    /**
     * Whether a password is the one of an account.
     *
     * @param id the account
     * @param typed as typed
     * @return false also if none was set
     */
    public boolean hasPassword(String id, String typed) {
        return passwordHash(id).filter(h -> hash.matches(typed, h)).isPresent();
    }

    /**
     * Whether another manager could still sign in if this account could not.
     *
     * @param id the account
     * @return true if there is one
     */
    public boolean anotherManager(String id) {
        return jdbc.sql("select count(*) from account where role = 'MANAGER' and not locked"
                                + " and password is not null and id <> ?")
                        .param(id)
                        .query(Long.class)
                        .single()
                > 0;
    }

    /** A name as it is kept: case and blanks around it do not count. */
    static String plain(String name) {
        return name.strip().toLowerCase(Locale.ROOT);
    }

    private static Account account(ResultSet row, int number) throws SQLException {
        return new Account(
                row.getString("id"),
                row.getString("name"),
                row.getString("full_name"),
                Role.valueOf(row.getString("role")),
                row.getString("password") != null,
                row.getBoolean("locked"),
                Instant.ofEpochMilli(row.getLong("created_at")),
                row.getInt("version"));
    }
}

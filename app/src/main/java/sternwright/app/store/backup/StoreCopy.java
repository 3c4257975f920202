package sternwright.app.store.backup;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.util.List;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.sqlite.SQLiteDataSource;
import sternwright.app.files.problem.BadInput;
import sternwright.app.store.Store;
import sternwright.app.store.StoreAddress;

/** Writes a store, and the accounts beside it, into SQLite files and reads them back. */
public final class StoreCopy {
    /** What is kept of a store; waiting jobs are not, they belong to the programs that run. */
    private static final List<String> YARD =
            List.of("shelf_change", "shelf_text", "shelf_head", "attachment", "season_run");

    /** Everything beside the yard in the order it was made; not sessions: after a restore everybody signs in again. */
    private static final String ACCOUNTS = "select name from sqlite_master where type = 'table'"
            + " and name not like 'sqlite_%' and name not like 'spring_session%' and name <> 'account_schema_history'"
            + " order by rowid";

    private StoreCopy() {}

    /**
     * Writes a store as it is now into a new file, while others go on writing.
     *
     * @param store the store
     * @param file where there is none yet
     * @throws IOException if the store or the disk refuses
     */
    public static void write(Store store, Path file) throws IOException {
        if (store.address().isFile()) {
            vacuum(store.reader(), file);
            withoutWorkedOut(file);
            return;
        }
        try (Store copy = Store.open(StoreAddress.file(file), Clock.systemUTC())) {
            new TableCopy(store.writer(), copy.writer()).copy(YARD);
        } catch (SQLException e) {
            throw new IOException("cannot copy " + store.place() + ": " + e.getMessage(), e);
        }
    }

    /**
     * Reads a store's file into a store that is empty.
     *
     * @param file the file, verified
     * @param store the empty store
     * @throws BadInput if the store is not empty
     * @throws IOException if the store or the disk refuses; the store is still empty then
     */
    public static void read(Path file, Store store) throws IOException {
        if (!store.shelf("").marks().isEmpty()) {
            throw BadInput.of(
                    store.place(), "there is a yard in it already", "an empty database", "Name another database.");
        }
        try (Store copy = Store.open(StoreAddress.file(file), Clock.systemUTC())) {
            new TableCopy(copy.reader(), store.writer()).copy(YARD);
        } catch (SQLException e) {
            throw new IOException("cannot copy into " + store.place() + ": " + e.getMessage(), e);
        }
    }

    /**
     * Writes accounts and the audit as they are now into a new file.
     *
     * @param accounts a database that holds them
     * @param file where there is none yet
     * @throws IOException if the database or the disk refuses
     */
    public static void writeAccounts(DataSource accounts, Path file) throws IOException {
        copyAccounts(accounts, sqlite(file), sqlite(file));
    }

    /**
     * Reads accounts from a file.
     *
     * @param file the file
     * @param accounts the database; what accounts it holds are replaced
     * @throws IOException if the database or the disk refuses
     */
    public static void readAccounts(Path file, DataSource accounts) throws IOException {
        copyAccounts(sqlite(file), accounts, sqlite(file));
    }

    /**
     * A database in one file.
     *
     * @param file the file
     * @return connections to it
     */
    public static DataSource sqlite(Path file) {
        SQLiteDataSource source = new SQLiteDataSource();
        source.setUrl("jdbc:sqlite:" + file.toAbsolutePath());
        return source;
    }

    private static void copyAccounts(DataSource from, DataSource to, DataSource listed) throws IOException {
        Flyway.configure()
                .dataSource(to)
                .locations("classpath:db/account")
                .table("account_schema_history")
                .baselineOnMigrate(true)
                .baselineVersion("0")
                .loggers("slf4j")
                .load()
                .migrate();
        try {
            List<String> tables =
                    JdbcClient.create(listed).sql(ACCOUNTS).query(String.class).list();
            new TableCopy(from, to).copy(tables);
        } catch (SQLException e) {
            throw new IOException("cannot copy the accounts: " + e.getMessage(), e);
        }
    }

    /** What follows from the texts is worked out again; a backup does without. */
    private static void withoutWorkedOut(Path file) throws IOException {
        try (Connection c = sqlite(file).getConnection();
                Statement s = c.createStatement()) {
            if (s.executeUpdate("delete from worked_out") > 0) {
                s.execute("vacuum");
            }
        } catch (SQLException e) {
            Files.deleteIfExists(file);
            throw new IOException("cannot write " + file + ": " + e.getMessage(), e);
        }
    }

    /** SQLite's own copy of a database in use, as it is at one moment (SQLite documentation, "VACUUM INTO"). */
    private static void vacuum(DataSource source, Path file) throws IOException {
        try (Connection c = source.getConnection();
                PreparedStatement copy = c.prepareStatement("vacuum into ?")) {
            copy.setString(1, file.toAbsolutePath().toString());
            copy.execute();
        } catch (SQLException e) {
            Files.deleteIfExists(file);
            throw new IOException("cannot write " + file + ": " + e.getMessage(), e);
        }
    }
}

package sternwright.app.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.springframework.jdbc.core.simple.JdbcClient;
import sternwright.app.files.shelf.Keeper;
import sternwright.app.files.shelf.Shelf;

/** A yard's store, opened. Any number of threads may use it; where it is PostgreSQL, any number of programs. */
public final class Store implements Keeper, AutoCloseable {
    private final StoreAddress address;
    private final Clock clock;
    private final Pools pools;
    private final Texts texts;

    private Store(StoreAddress address, Clock clock, Pools pools) {
        this.address = address;
        this.clock = clock;
        this.pools = pools;
        this.texts = new Texts(JdbcClient.create(pools.reader()));
    }

    /**
     * Opens a store; makes it, or brings it up to this program's form, where that is needed.
     *
     * @param address where it is
     * @param clock tells when something was changed
     * @return the store; close it in the end
     * @throws IOException if it cannot be reached or is no store
     */
    public static Store open(StoreAddress address, Clock clock) throws IOException {
        if (address.isFile()) {
            Path folder = address.path().toAbsolutePath().getParent();
            if (folder != null) {
                Files.createDirectories(folder);
            }
        }
        Pools pools = null;
        try {
            pools = Pools.open(address);
            Flyway.configure()
                    .dataSource(pools.writer())
                    .locations("classpath:db/store")
                    .table("store_schema_history")
                    .baselineOnMigrate(true)
                    .baselineVersion("0")
                    .loggers("slf4j")
                    .load()
                    .migrate();
            return new Store(address, clock, pools);
        } catch (FlywayException | com.zaxxer.hikari.pool.HikariPool.PoolInitializationException e) {
            if (pools != null) {
                pools.close();
            }
            throw StoreTrouble.of(address.place(), e);
        }
    }

    @Override
    public Shelf shelf(String by) {
        return new StoreShelf(this, by, Texts.NOW);
    }

    /**
     * How a text became what it is, the newest first.
     *
     * @param name of the text
     * @return its versions
     */
    public List<TextVersion> versions(String name) {
        return TextVersion.of(texts.changes(name));
    }

    /**
     * Photos and documents.
     *
     * @return where they are kept
     */
    public Attachments attachments() {
        return new Attachments(this);
    }

    /**
     * Where it is, as a person knows it.
     *
     * @return a file, or the address of a database
     */
    public String place() {
        return address.place();
    }

    /**
     * The address it was opened with.
     *
     * @return where it is
     */
    public StoreAddress address() {
        return address;
    }

    /**
     * Connections that write. SQLite: one, which begins every transaction by taking the file.
     *
     * @return the pool
     */
    public DataSource writer() {
        return pools.writer();
    }

    /**
     * Connections that only read.
     *
     * @return the pool
     */
    public DataSource reader() {
        return pools.reader();
    }

    Pools pools() {
        return pools;
    }

    Texts texts() {
        return texts;
    }

    /**
     * The clock it notes times by.
     *
     * @return the clock
     */
    public Clock clock() {
        return clock;
    }

    @Override
    public void close() {
        pools.close();
    }
}

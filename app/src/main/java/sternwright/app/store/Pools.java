package sternwright.app.store;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;

/**
 * Connections to a store. SQLite has one writer at a time, so one connection writes and waits for its turn instead of failing;
 * others read beside it. A write is on the disk when it is said to be done (synchronous=FULL; SQLite documentation, "PRAGMA
 * synchronous").
 */
final class Pools implements AutoCloseable {
    private static final String SQLITE = "journal_mode=WAL&synchronous=FULL&foreign_keys=true&busy_timeout=30000";
    private static final int READERS = 4;
    private static final int BOTH = 8;
    private static final long WAIT_MS = 30_000;

    private final HikariDataSource writer;
    private final HikariDataSource reader;

    private Pools(HikariDataSource writer, HikariDataSource reader) {
        this.writer = writer;
        this.reader = reader;
    }

    static Pools open(StoreAddress address) {
        if (address.isFile()) {
            String url = address.url() + (address.url().contains("?") ? "&" : "?") + SQLITE;
            HikariDataSource writer = pool(address, url + "&transaction_mode=IMMEDIATE", 1);
            return new Pools(writer, pool(address, url, READERS));
        }
        HikariDataSource pool = pool(address, address.url(), BOTH);
        return new Pools(pool, pool);
    }

    private static HikariDataSource pool(StoreAddress address, String url, int most) {
        HikariConfig config = new HikariConfig();
        config.setJdbcUrl(url);
        if (!address.isFile()) {
            config.setUsername(address.user());
            config.setPassword(address.password());
        }
        config.setMaximumPoolSize(most);
        config.setMinimumIdle(1);
        config.setConnectionTimeout(WAIT_MS);
        config.setPoolName("store-" + most);
        return new HikariDataSource(config);
    }

    HikariDataSource writer() {
        return writer;
    }

    HikariDataSource reader() {
        return reader;
    }

    @Override
    public void close() {
        reader.close();
        writer.close();
    }
}

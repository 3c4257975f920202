package sternwright.app.store;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.sql.SQLException;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The store that several programs share. */
class PostgresStoreTest extends StoreContract {
    @Override
    StoreAddress address() throws SQLException {
        return RunningPostgres.fresh();
    }

    @Test
    void itIsARealServerOfTheVersionPromised() {
        String version = JdbcClient.create(store.reader())
                .sql("show server_version")
                .query(String.class)
                .single();
        assertTrue(version.startsWith("15."), version);
    }
}

package sternwright.app.store;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The store in one file. */
class SqliteStoreTest extends StoreContract {
    @TempDir
    Path folder;

    @Override
    StoreAddress address() {
        return StoreAddress.file(folder.resolve("yard.db"));
    }

    @Test
    void aWriteIsOnTheDiskWhenItIsDone() {
        JdbcClient writer = JdbcClient.create(store.writer());
        assertEquals(
                "wal", writer.sql("pragma journal_mode").query(String.class).single());
        assertEquals(2, writer.sql("pragma synchronous").query(Integer.class).single(), "2 is FULL");
    }
}

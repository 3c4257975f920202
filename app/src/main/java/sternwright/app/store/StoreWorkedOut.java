package sternwright.app.store;

import java.io.IOException;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.SingleConnectionDataSource;
import sternwright.app.files.shelf.WorkedOut;

/** What was worked out, in a table of its own. A text's seal is the hash of its last change, which covers all before it. */
final class StoreWorkedOut implements WorkedOut {
    private static final int AT_ONCE = 100;

    private final Store store;
    private final long at;

    StoreWorkedOut(Store store, long at) {
        this.store = store;
        this.at = at;
    }

    @Override
    public Map<String, String> seals() throws IOException {
        Map<String, String> seals = new HashMap<>();
        try {
            JdbcClient.create(store.reader())
                    .sql(
                            "select t.name, t.last_seq, c.chain_hash from shelf_text t join shelf_change c on c.seq = t.last_seq"
                                    + " where not t.gone or t.last_seq > ?")
                    .param(at)
                    .query(row -> {
                        seals.put(row.getString(1), row.getLong(2) > at ? MOVING : row.getString(3));
                    });
        } catch (DataAccessException e) {
            throw StoreTrouble.of(store.place(), e);
        }
        return seals;
    }

    @Override
    public void read(String kind, Taker taker) throws IOException {
        JdbcTemplate rows = new JdbcTemplate(store.reader());
        rows.setFetchSize(AT_ONCE);
        try {
            rows.query(
                    "select name, made_from, content from worked_out where kind = ?",
                    row -> {
                        taker.row(row.getString(1), row.getString(2), row.getBytes(3));
                    },
                    kind);
        } catch (DataAccessException e) {
            throw StoreTrouble.of(store.place(), e);
        }
    }

    @Override
    public void keep(String kind, Map<String, Row> rows) throws IOException {
        List<Object[]> values = new TreeMap<>(rows)
                .entrySet().stream()
                        .map(e -> new Object[] {
                            kind,
                            e.getKey(),
                            e.getValue().madeFrom(),
                            e.getValue().content()
                        })
                        .toList();
        Connection connection = null;
        try {
            connection = store.writer().getConnection();
            connection.setAutoCommit(false);
            new JdbcTemplate(new SingleConnectionDataSource(connection, true))
                    .batchUpdate(
                            "insert into worked_out (kind, name, made_from, content) values (?, ?, ?, ?)"
                                    + " on conflict (kind, name) do update set made_from = excluded.made_from,"
                                    + " content = excluded.content",
                            values);
            connection.commit();
        } catch (SQLException | DataAccessException e) {
            throw StoreTrouble.of(store.place(), e);
        } finally {
            StoreWriting.giveBack(store, connection);
        }
    }
}

package sternwright.app.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.SingleConnectionDataSource;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.shelf.EditConflict;
import sternwright.app.files.shelf.Kept;
import sternwright.app.files.shelf.ShelfName;
import sternwright.app.files.shelf.Writing;

/** A change of a store: one transaction, begun by taking the head row, so that changes come one after the other. */
final class StoreWriting implements Writing {
    /** A table is written whole again after this many tails, so that reading it stays quick. */
    private static final int MOST_TAILS = 50;

    private static final int LONGEST_NAME = 120;
    private static final int LONGEST_WHY = 300;

    private final Store store;
    private final Connection connection;
    private final JdbcTemplate jdbc;
    private final Texts texts;
    private final String by;
    private final String why;
    private final Map<String, Optional<String>> wanted = new LinkedHashMap<>();

    private StoreWriting(Store store, Connection connection, String by, String why) {
        this.store = store;
        this.connection = connection;
        SingleConnectionDataSource one = new SingleConnectionDataSource(connection, true);
        this.jdbc = new JdbcTemplate(one);
        this.texts = new Texts(JdbcClient.create(one));
        this.by = cut(by, LONGEST_NAME);
        this.why = cut(why, LONGEST_WHY);
    }

    static StoreWriting open(Store store, String by, String why) throws IOException {
        Connection connection = null;
        try {
            connection = store.writer().getConnection();
            connection.setAutoCommit(false);
            StoreWriting writing = new StoreWriting(store, connection, by, why);
            if (!store.address().isFile()) {
                writing.jdbc.execute("set local lock_timeout = '30s'");
            }
            writing.jdbc.update("update shelf_head set id = id where id = 1");
            return writing;
        } catch (SQLException | DataAccessException e) {
            giveBack(store, connection);
            throw StoreTrouble.of(store.place(), e);
        }
    }

    /**
     * A connection whose transaction the database has ended by itself, as SQLite does when the disk is full, must not be used
     * again: its driver would take the next change for part of a transaction that is none.
     */
    static void giveBack(Store store, @Nullable Connection connection) {
        if (connection == null) {
            return;
        }
        try (connection) {
            boolean sound = false;
            try {
                connection.rollback();
                connection.setAutoCommit(true);
                sound = true;
            } finally {
                if (!sound) {
                    store.pools().writer().evictConnection(connection);
                }
            }
        } catch (SQLException alreadyLost) {
            return;
        }
    }

    @Override
    public void put(String name, String text) {
        ShelfName.require(name);
        if (text.indexOf('\0') >= 0 || !StandardCharsets.UTF_8.newEncoder().canEncode(text)) {
            throw BadInput.of(name, "not text: it holds signs that no text has", "UTF-8 text", "Type it again.");
        }
        wanted.put(name, Optional.of(text));
    }

    @Override
    public void put(String name, String text, String versionRead) throws IOException {
        ShelfName.require(name);
        Kept now;
        try {
            now = texts.kept(name, Texts.NOW).orElse(null);
        } catch (DataAccessException e) {
            throw StoreTrouble.of(store.place(), e);
        }
        if (!versionRead.equals(now == null ? "" : now.version())) {
            throw new EditConflict(name, text, now);
        }
        put(name, text);
    }

    @Override
    public void remove(String name) {
        wanted.put(ShelfName.require(name), Optional.empty());
    }

    @Override
    public void commit() throws IOException {
        try {
            write();
            connection.commit();
            wanted.clear();
        } catch (SQLException | DataAccessException e) {
            throw StoreTrouble.of(store.place(), e);
        }
    }

    private void write() {
        Texts.Head head = texts.lastChange();
        long seq = head.seq();
        String chain = head.chain();
        long at = store.clock().millis();
        List<Object[]> changes = new ArrayList<>();
        List<Object[]> places = new ArrayList<>();
        for (Map.Entry<String, Optional<String>> one : wanted.entrySet()) {
            List<ChangeRow> before = texts.rows(one.getKey(), Texts.NOW);
            ChangeRow row = change(one.getKey(), before, one.getValue(), seq + 1, at);
            if (row == null) {
                continue;
            }
            seq++;
            chain = Chain.of(chain, row);
            changes.add(new Object[] {
                seq, row.name(), row.version(), row.kind(), row.text(), row.textHash(), chain, by, at, why
            });
            long first = row.isTail() ? before.get(0).seq() : seq;
            places.add(new Object[] {row.name(), folder(row.name()), row.version(), first, seq, row.isGone()});
        }
        jdbc.batchUpdate(
                "insert into shelf_change (seq, name, version, kind, text, text_hash, chain_hash, by_whom, at, why)"
                        + " values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
                changes);
        jdbc.batchUpdate(
                "insert into shelf_text (name, folder, version, first_seq, last_seq, gone) values (?, ?, ?, ?, ?, ?)"
                        + " on conflict (name) do update set version = excluded.version,"
                        + " first_seq = excluded.first_seq, last_seq = excluded.last_seq, gone = excluded.gone",
                places);
        jdbc.update("update shelf_head set seq = ?, chain_hash = ? where id = 1", seq, chain);
    }

    /** The row that makes the text what is wanted; null if it is that already. */
    private @Nullable ChangeRow change(String name, List<ChangeRow> before, Optional<String> text, long seq, long at) {
        int version = before.isEmpty() ? 1 : before.get(before.size() - 1).version() + 1;
        String now = Texts.together(before).map(Kept::text).orElse(null);
        if (text.isEmpty()) {
            return now == null
                    ? null
                    : new ChangeRow(seq, name, version, ChangeRow.GONE, "", Chain.of(""), by, at, why);
        }
        String after = text.get();
        if (after.equals(now)) {
            return null;
        }
        boolean grows = now != null
                && name.endsWith(".csv")
                && before.size() <= MOST_TAILS
                && !now.isEmpty()
                && after.startsWith(now);
        String kept = grows && now != null ? after.substring(now.length()) : after;
        String kind = grows ? ChangeRow.TAIL : ChangeRow.WHOLE;
        return new ChangeRow(seq, name, version, kind, kept, Chain.of(kept), by, at, why);
    }

    private static String folder(String name) {
        int slash = name.lastIndexOf('/');
        return slash < 0 ? "" : name.substring(0, slash);
    }

    private static String cut(String text, int most) {
        return text.length() <= most ? text : text.substring(0, most - 1) + "\u2026";
    }

    @Override
    public void close() {
        giveBack(store, connection);
    }
}

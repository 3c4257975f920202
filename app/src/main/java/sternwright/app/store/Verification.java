package sternwright.app.store;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * Proves that a store is as it was written.
 *
 * @param changes changes of texts whose hashes were worked out again
 * @param texts texts that stand there now
 * @param attachments photos and documents whose hashes were worked out again
 * @param faults what is wrong, in words; none if all is well
 */
public record Verification(long changes, int texts, int attachments, List<String> faults) {
    /** Copies the list. */
    public Verification {
        faults = List.copyOf(faults);
    }

    private static final int ENOUGH = 50;

    /**
     * Verifies a store.
     *
     * @param store the store
     * @return what was found
     * @throws IOException if it cannot be read at all
     */
    public static Verification of(Store store) throws IOException {
        try {
            return new Search(store).found();
        } catch (DataAccessException e) {
            throw StoreTrouble.of(store.place(), e);
        }
    }

    private static final class Search {
        private final Store store;
        private final JdbcClient jdbc;
        private final List<String> faults = new ArrayList<>();
        private final Map<String, String> now = new HashMap<>();
        private String chain = "";
        private long seq;

        Search(Store store) {
            this.store = store;
            this.jdbc = JdbcClient.create(store.reader());
        }

        Verification found() {
            if (store.address().isFile()) {
                jdbc.sql("pragma integrity_check").query(String.class).list().stream()
                        .filter(s -> !s.equals("ok"))
                        .forEach(s -> fault("the file is damaged: " + s));
            }
            changes();
            places();
            return new Verification(seq, now.size(), attachments(), faults);
        }

        private void changes() {
            JdbcTemplate rows = new JdbcTemplate(store.reader());
            rows.setFetchSize(500);
            rows.query("select " + ChangeRow.COLUMNS + ", chain_hash from shelf_change order by seq", row -> {
                change(ChangeRow.of(row, 0), row.getString(10));
            });
            Texts.Head head = store.texts().lastChange();
            if (head.seq() != seq || !head.chain().equals(chain)) {
                fault("the last changes are missing: it counted " + head.seq() + " and holds " + seq);
            }
        }

        private void change(ChangeRow row, String hash) {
            if (row.seq() != seq + 1) {
                fault("changes " + (seq + 1) + " to " + (row.seq() - 1) + " are missing");
            }
            if (!Chain.of(row.text()).equals(row.textHash())) {
                fault("the text of " + row.name() + " version " + row.version() + " was altered");
            }
            String right = Chain.of(chain, row);
            if (!right.equals(hash)) {
                fault("what is noted of " + row.name() + " version " + row.version() + " (change " + row.seq()
                        + ") was altered");
            }
            chain = hash;
            seq = row.seq();
            if (row.isGone()) {
                now.remove(row.name());
            } else {
                now.put(row.name(), row.version() + " " + row.seq());
            }
        }

        private void places() {
            Map<String, String> places = new HashMap<>();
            jdbc.sql("select name, version, last_seq from shelf_text where not gone")
                    .query(row -> {
                        places.put(row.getString(1), row.getInt(2) + " " + row.getLong(3));
                    });
            if (!places.equals(now)) {
                fault("the list of texts does not agree with their changes");
            }
        }

        private int attachments() {
            List<String> ids = jdbc.sql("select id from attachment order by at, id")
                    .query(String.class)
                    .list();
            for (String id : ids) {
                jdbc.sql("select name, sha256, size, content from attachment where id = ?")
                        .param(id)
                        .query(row -> {
                            byte[] content = row.getBytes(4);
                            if (content.length != row.getLong(3)
                                    || !Chain.of(content).equals(row.getString(2))) {
                                fault(row.getString(1) + " was altered");
                            }
                        });
            }
            return ids.size();
        }

        private void fault(String what) {
            if (faults.size() < ENOUGH) {
                faults.add(what);
            }
        }
    }
}

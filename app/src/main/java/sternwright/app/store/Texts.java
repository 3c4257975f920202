package sternwright.app.store;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import sternwright.app.files.shelf.Kept;

/** Reads texts: each is its last whole row with the tails added since. */
final class Texts {
    static final long NOW = Long.MAX_VALUE;

    private static final String ROWS = "select " + ChangeRow.COLUMNS
            + " from shelf_change where name = ? and seq <= ? and seq >="
            + " (select max(seq) from shelf_change where name = ? and seq <= ? and kind <> 'tail') order by seq";

    private final JdbcClient jdbc;

    Texts(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * The last change.
     *
     * @param seq its number, 0 if there was none
     * @param chain its hash in the chain
     */
    record Head(long seq, String chain) {}

    Head lastChange() {
        return jdbc.sql("select seq, chain_hash from shelf_head where id = 1")
                .query((row, n) -> new Head(row.getLong(1), row.getString(2)))
                .single();
    }

    /** The number of the last change. */
    long head() {
        return jdbc.sql("select seq from shelf_head where id = 1")
                .query(Long.class)
                .single();
    }

    /** The rows that make up a text after a change; the last one may say that it is gone. */
    List<ChangeRow> rows(String name, long at) {
        return jdbc.sql(ROWS).params(name, at, name, at).query(ChangeRow::of).list();
    }

    /** A text as it was after a change. */
    Optional<Kept> kept(String name, long at) {
        return together(rows(name, at));
    }

    static Optional<Kept> together(List<ChangeRow> rows) {
        if (rows.isEmpty() || rows.get(rows.size() - 1).isGone()) {
            return Optional.empty();
        }
        StringBuilder text = new StringBuilder();
        rows.forEach(r -> text.append(r.text()));
        ChangeRow last = rows.get(rows.size() - 1);
        return Optional.of(new Kept(
                last.name(),
                text.toString(),
                Integer.toString(last.version()),
                last.by(),
                Instant.ofEpochMilli(last.at())));
    }

    private record Place(String name, long lastSeq, boolean gone) {}

    /** The names in a folder after a change, in order. */
    List<String> names(String folder, long at) {
        List<Place> places = jdbc.sql("select name, last_seq, gone from shelf_text where folder = ?")
                .param(folder)
                .query((row, n) -> new Place(row.getString(1), row.getLong(2), row.getBoolean(3)))
                .list();
        List<String> names = new ArrayList<>();
        for (Place place : places) {
            boolean there =
                    place.lastSeq <= at ? !place.gone : kept(place.name, at).isPresent();
            if (there) {
                names.add(place.name);
            }
        }
        return names.stream().sorted().toList();
    }

    boolean holds(String name, long at) {
        List<String> kinds = jdbc.sql(
                        "select kind from shelf_change where name = ? and seq <= ? order by seq desc limit 1")
                .params(name, at)
                .query(String.class)
                .list();
        return !kinds.isEmpty() && !kinds.get(0).equals(ChangeRow.GONE);
    }

    /** All names with the number of their last change. */
    Map<String, String> marks() {
        Map<String, String> marks = new LinkedHashMap<>();
        jdbc.sql("select name, last_seq from shelf_text where not gone order by name")
                .query(row -> {
                    marks.put(row.getString(1), Long.toString(row.getLong(2)));
                });
        return marks;
    }

    /** Every change of a text, the newest first. */
    List<ChangeRow> changes(String name) {
        return jdbc.sql("select " + ChangeRow.COLUMNS + " from shelf_change where name = ? order by seq desc")
                .param(name)
                .query(ChangeRow::of)
                .list();
    }
}

package sternwright.app.store;

import java.sql.ResultSet;
import java.sql.SQLException;

/**
 * One change of one text.
 *
 * @param seq counts all changes of the store from 1
 * @param name of the text
 * @param version counts the changes of this text from 1
 * @param kind {@link #WHOLE}, {@link #TAIL} or {@link #GONE}
 * @param text the whole text, or what was added at its end
 * @param textHash SHA-256 of {@code text}
 * @param by who changed it
 * @param at when, milliseconds since 1970 UTC
 * @param why in a few words
 */
record ChangeRow(
        long seq, String name, int version, String kind, String text, String textHash, String by, long at, String why) {
    static final String WHOLE = "whole";
    static final String TAIL = "tail";
    static final String GONE = "gone";
    static final String COLUMNS = "seq, name, version, kind, text, text_hash, by_whom, at, why";

    static ChangeRow of(ResultSet row, int number) throws SQLException {
        return new ChangeRow(
                row.getLong(1),
                row.getString(2),
                row.getInt(3),
                row.getString(4),
                row.getString(5),
                row.getString(6),
                row.getString(7),
                row.getLong(8),
                row.getString(9));
    }

    boolean isTail() {
        return kind.equals(TAIL);
    }

    boolean isGone() {
        return kind.equals(GONE);
    }
}

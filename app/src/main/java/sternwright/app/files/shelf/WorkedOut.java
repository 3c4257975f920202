package sternwright.app.files.shelf;

import java.io.IOException;
import java.util.Map;

/**
 * What was worked out from a keeper's texts and is kept beside them, to be there at the next start. It may be thrown away at any
 * time and is no part of the yard: no backup holds it and no proof covers it.
 */
public interface WorkedOut {
    /** The seal of a text that has changed since the shelf was held still: nothing can be said of it. */
    String MOVING = "moving";

    /**
     * A row.
     *
     * @param madeFrom stands for all that the content was worked out from
     * @param content what was worked out
     */
    record Row(String madeFrom, byte[] content) {}

    /** Takes rows as they are read. */
    @FunctionalInterface
    interface Taker {
        /**
         * Takes one.
         *
         * @param name what it is of
         * @param madeFrom stands for all that it was worked out from
         * @param content what was worked out
         */
        void row(String name, String madeFrom, byte[] content);
    }

    /**
     * What stands for what each text says: equal only if the text, and everything that was written before it, is equal.
     *
     * @return seals by the names of texts; {@link #MOVING} where it cannot be told
     * @throws IOException if the keeper cannot be read
     */
    Map<String, String> seals() throws IOException;

    /**
     * Reads what is kept.
     *
     * @param kind what it is
     * @param taker takes each
     * @throws IOException if the keeper cannot be read
     */
    void read(String kind, Taker taker) throws IOException;

    /**
     * Keeps rows in place of those of the same names.
     *
     * @param kind what they are
     * @param rows by name
     * @throws IOException if the keeper cannot be written
     */
    void keep(String kind, Map<String, Row> rows) throws IOException;
}

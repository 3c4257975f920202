package sternwright.app.files.shelf;

import java.io.IOException;

/** Texts that change together: all of them at {@link #commit}, or none. */
public interface Writing extends AutoCloseable {
    /**
     * Says what a text shall hold; a later one of the same name replaces the earlier. For deeds that read inside the change.
     *
     * @param name of the text
     * @param text what it shall say
     */
    void put(String name, String text);

    /**
     * Says what a text shall hold if nobody has changed it since its editor read it.
     *
     * @param name of the text
     * @param text what it shall say
     * @param versionRead the version its editor had read; empty if there was no such text
     * @throws EditConflict if somebody has changed it since; nothing is written then
     * @throws IOException if the keeper cannot be read
     */
    void put(String name, String text, String versionRead) throws IOException;

    /**
     * Takes a text away. A store keeps what it said.
     *
     * @param name of the text
     */
    void remove(String name);

    /**
     * Writes everything.
     *
     * @throws IOException if the keeper refuses; nothing has changed then
     */
    void commit() throws IOException;

    /** Lets others write; what was not committed is forgotten. */
    @Override
    void close() throws IOException;
}

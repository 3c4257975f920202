package sternwright.app.store;

import java.nio.file.Path;
import sternwright.app.files.problem.BadInput;

/**
 * Where a store is.
 *
 * @param url as JDBC writes it: {@code jdbc:sqlite:FILE} or {@code jdbc:postgresql://HOST/NAME}
 * @param user for PostgreSQL; empty for SQLite
 * @param password for PostgreSQL; empty for SQLite
 */
public record StoreAddress(String url, String user, String password) {
    private static final String SQLITE = "jdbc:sqlite:";
    private static final String POSTGRESQL = "jdbc:postgresql:";

    /** Refuses any other kind of database. */
    public StoreAddress {
        if (!url.startsWith(SQLITE) && !url.startsWith(POSTGRESQL)) {
            throw BadInput.of(
                    "database",
                    "found \"" + url.replaceFirst("[?].*", "") + "\"",
                    "jdbc:sqlite:FILE or jdbc:postgresql://HOST/NAME",
                    "");
        }
    }

    /**
     * A store in one file.
     *
     * @param file the file; made when the store is opened
     * @return its address
     */
    public static StoreAddress file(Path file) {
        return new StoreAddress(SQLITE + file.toAbsolutePath(), "", "");
    }

    /**
     * Whether it is one file on this machine.
     *
     * @return false for PostgreSQL
     */
    public boolean isFile() {
        return url.startsWith(SQLITE);
    }

    /**
     * The file of a store that is one.
     *
     * @return the file
     */
    public Path path() {
        return Path.of(url.substring(SQLITE.length()).replaceFirst("[?].*", ""));
    }

    /**
     * Where it is, as a person knows it; without the password.
     *
     * @return the file, or the database's address
     */
    public String place() {
        return isFile() ? path().toString() : url.substring("jdbc:".length()).replaceFirst("[?].*", "");
    }

    @Override
    public String toString() {
        return place();
    }
}

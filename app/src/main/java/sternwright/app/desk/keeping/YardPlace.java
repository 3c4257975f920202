package sternwright.app.desk.keeping;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import org.jspecify.annotations.Nullable;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.shelf.FolderShelf;
import sternwright.app.files.shelf.Keeper;
import sternwright.app.files.shelf.Shelf;
import sternwright.app.store.Store;
import sternwright.app.store.StoreAddress;

/**
 * Where a yard is kept. A PostgreSQL database if one is named, by {@code .desk/database.properties} in the yard's folder (url,
 * user, password) or by the environment (STERNWRIGHT_DATABASE_URL, _USER, _PASSWORD); else the store {@code .desk/yard.db} if
 * there is one; else the folder itself.
 */
public final class YardPlace implements Keeper, AutoCloseable {
    private static final String OWN = ".desk";
    private static final String STORE = "yard.db";
    private static final String ACCOUNTS = "accounts.db";
    private static final String NAMED = "database.properties";
    private static final String VARIABLE = "STERNWRIGHT_DATABASE_";

    private final Path folder;

    @Nullable
    private final Store store;

    private YardPlace(Path folder, @Nullable Store store) {
        this.folder = folder;
        this.store = store;
    }

    /**
     * Finds and opens it.
     *
     * @param folder the yard's folder
     * @param environment of the program
     * @param clock tells a store when something was changed
     * @return the place; close it in the end
     * @throws BadInput if what names a database cannot be used
     * @throws IOException if a store cannot be reached
     */
    public static YardPlace of(Path folder, Map<String, String> environment, Clock clock) throws IOException {
        Optional<StoreAddress> named = named(folder, environment);
        if (named.isEmpty() && !Files.exists(storeFile(folder))) {
            return new YardPlace(folder, null);
        }
        return new YardPlace(folder, Store.open(named.orElseGet(() -> StoreAddress.file(storeFile(folder))), clock));
    }

    /**
     * Opens the store of a yard, and makes one in its folder if it has none yet.
     *
     * @param folder the yard's folder
     * @param environment of the program
     * @param clock tells a store when something was changed
     * @return the place, with a store that may be empty
     * @throws IOException if the store cannot be reached
     */
    public static YardPlace withStore(Path folder, Map<String, String> environment, Clock clock) throws IOException {
        Optional<StoreAddress> named = named(folder, environment);
        return new YardPlace(folder, Store.open(named.orElseGet(() -> StoreAddress.file(storeFile(folder))), clock));
    }

    /**
     * The database a yard's folder or the environment names.
     *
     * @param folder the yard's folder
     * @param environment of the program
     * @return its address; empty if none is named
     * @throws BadInput if it cannot be used
     * @throws IOException if the disk refuses
     */
    public static Optional<StoreAddress> named(Path folder, Map<String, String> environment) throws IOException {
        Path file = folder.resolve(OWN).resolve(NAMED);
        if (!Files.exists(file)) {
            String url = environment.getOrDefault(VARIABLE + "URL", "");
            return url.isBlank()
                    ? Optional.empty()
                    : Optional.of(new StoreAddress(
                            url,
                            environment.getOrDefault(VARIABLE + "USER", ""),
                            environment.getOrDefault(VARIABLE + "PASSWORD", "")));
        }
        Properties said = new Properties();
        try (Reader text = Files.newBufferedReader(file)) {
            said.load(text);
        }
        String url = said.getProperty("url", "");
        if (url.isBlank()) {
            throw BadInput.of(file.toString(), "there is no url in it", "url=jdbc:postgresql://HOST/NAME", "");
        }
        return Optional.of(
                new StoreAddress(url.strip(), said.getProperty("user", ""), said.getProperty("password", "")));
    }

    /**
     * The file of a yard's own store.
     *
     * @param folder the yard's folder
     * @return the file, there or not
     */
    public static Path storeFile(Path folder) {
        return folder.resolve(OWN).resolve(STORE);
    }

    /**
     * The file of a yard's accounts, where they are not in a named database.
     *
     * @param folder the yard's folder
     * @return the file, there or not
     */
    public static Path accountsFile(Path folder) {
        return folder.resolve(OWN).resolve(ACCOUNTS);
    }

    @Override
    public Shelf shelf(String by) {
        return store == null ? new FolderShelf(folder) : store.shelf(by);
    }

    /**
     * The store.
     *
     * @return empty if the yard is kept in its folder
     */
    public Optional<Store> store() {
        return Optional.ofNullable(store);
    }

    /**
     * The yard's folder.
     *
     * @return the folder, which need not hold the yard's texts
     */
    public Path folder() {
        return folder;
    }

    @Override
    public void close() {
        if (store != null) {
            store.close();
        }
    }
}

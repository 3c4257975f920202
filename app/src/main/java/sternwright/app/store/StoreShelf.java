package sternwright.app.store;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.springframework.dao.DataAccessException;
import sternwright.app.files.shelf.Kept;
import sternwright.app.files.shelf.Shelf;
import sternwright.app.files.shelf.ShelfName;
import sternwright.app.files.shelf.WorkedOut;
import sternwright.app.files.shelf.Writing;

/** The texts of a store, for one person: what is written is noted under that person's name. */
final class StoreShelf implements Shelf {
    private final Store store;
    private final String by;
    private final long at;

    StoreShelf(Store store, String by, long at) {
        this.store = store;
        this.by = by;
        this.at = at;
    }

    @Override
    public String place() {
        return store.place();
    }

    @Override
    public List<String> names(String folder) throws IOException {
        return ask(() -> store.texts().names(folder, at));
    }

    @Override
    public Optional<Kept> kept(String name) throws IOException {
        ShelfName.require(name);
        return ask(() -> store.texts().kept(name, at));
    }

    @Override
    public boolean holds(String name) throws IOException {
        ShelfName.require(name);
        return ask(() -> store.texts().holds(name, at));
    }

    @Override
    public Shelf still() throws IOException {
        return at == Texts.NOW
                ? new StoreShelf(store, by, ask(() -> store.texts().head()))
                : this;
    }

    @Override
    public String state() throws IOException {
        return Long.toString(at == Texts.NOW ? ask(() -> store.texts().head()) : at);
    }

    @Override
    public Map<String, String> marks() throws IOException {
        return ask(() -> store.texts().marks());
    }

    @Override
    public Writing write(String why) throws IOException {
        return StoreWriting.open(store, by, why);
    }

    @Override
    public Optional<WorkedOut> workedOut() throws IOException {
        return Optional.of(new StoreWorkedOut(
                store, at == Texts.NOW ? ask(() -> store.texts().head()) : at));
    }

    private <T> T ask(Supplier<T> question) throws IOException {
        try {
            return question.get();
        } catch (DataAccessException e) {
            throw StoreTrouble.of(place(), e);
        }
    }
}

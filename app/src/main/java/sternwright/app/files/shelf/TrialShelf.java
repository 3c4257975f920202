package sternwright.app.files.shelf;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A shelf on which deeds can be tried: they read what is there, and what they write is forgotten. So a person sees what a deed would
 * do, told by the deed itself.
 *
 * @param shelf the shelf itself
 */
public record TrialShelf(Shelf shelf) implements Shelf {
    @Override
    public String place() {
        return shelf.place();
    }

    @Override
    public List<String> names(String folder) throws IOException {
        return shelf.names(folder);
    }

    @Override
    public Optional<Kept> kept(String name) throws IOException {
        return shelf.kept(name);
    }

    @Override
    public Optional<String> text(String name) throws IOException {
        return shelf.text(name);
    }

    @Override
    public boolean holds(String name) throws IOException {
        return shelf.holds(name);
    }

    @Override
    public Shelf still() throws IOException {
        return shelf.still();
    }

    @Override
    public String state() throws IOException {
        return shelf.state();
    }

    @Override
    public Map<String, String> marks() throws IOException {
        return shelf.marks();
    }

    @Override
    public Writing write(String why) {
        return new Forgotten(shelf);
    }

    /** A change that is never written; whether it could be is still asked. */
    private record Forgotten(Shelf shelf) implements Writing {
        @Override
        public void put(String name, String text) {
            ShelfName.require(name);
        }

        @Override
        public void put(String name, String text, String versionRead) throws IOException {
            Kept now = shelf.kept(ShelfName.require(name)).orElse(null);
            if (!versionRead.equals(now == null ? "" : now.version())) {
                throw new EditConflict(name, text, now);
            }
        }

        @Override
        public void remove(String name) {
            ShelfName.require(name);
        }

        @Override
        public void commit() {
            // A trial writes nothing.
        }

        @Override
        public void close() {
            // Nothing was taken.
        }
    }
}

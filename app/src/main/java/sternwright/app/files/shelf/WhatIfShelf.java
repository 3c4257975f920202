package sternwright.app.files.shelf;

import java.io.IOException;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * A shelf as it would be with some other texts on it, for readers that prove or work out a change before it is written.
 *
 * @param shelf the shelf itself
 * @param texts what some texts would say, by name
 */
public record WhatIfShelf(Shelf shelf, Map<String, String> texts) implements Shelf {
    /** Copies the texts. */
    public WhatIfShelf {
        texts = Map.copyOf(texts);
    }

    @Override
    public String place() {
        return shelf.place();
    }

    @Override
    public List<String> names(String folder) throws IOException {
        TreeSet<String> names = new TreeSet<>(shelf.names(folder));
        texts.keySet().stream()
                .filter(n -> n.substring(0, Math.max(0, n.lastIndexOf('/'))).equals(folder))
                .forEach(names::add);
        return List.copyOf(names);
    }

    @Override
    public Optional<Kept> kept(String name) throws IOException {
        String text = texts.get(name);
        return text == null ? shelf.kept(name) : Optional.of(new Kept(name, text, mark(text), "", Instant.EPOCH));
    }

    private static String mark(String text) {
        return "what if " + Integer.toHexString(text.hashCode());
    }

    @Override
    public boolean holds(String name) throws IOException {
        return texts.containsKey(name) || shelf.holds(name);
    }

    @Override
    public Shelf still() throws IOException {
        return new WhatIfShelf(shelf.still(), texts);
    }

    @Override
    public String state() throws IOException {
        return shelf.state() + " " + Integer.toHexString(texts.hashCode());
    }

    @Override
    public Map<String, String> marks() throws IOException {
        Map<String, String> marks = new TreeMap<>(shelf.marks());
        texts.forEach((name, text) -> marks.put(name, mark(text)));
        return marks;
    }

    /** Only the shelf itself can be written. */
    @Override
    public Writing write(String why) throws IOException {
        throw new UnsupportedOperationException("a shelf that might be is only read");
    }
}

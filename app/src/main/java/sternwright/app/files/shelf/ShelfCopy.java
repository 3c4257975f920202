package sternwright.app.files.shelf;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.util.ArrayList;
import java.util.List;

/**
 * Copies a yard's texts from one keeper to another, letter by letter.
 *
 * @param texts how many were copied
 * @param leftOut names that are no texts of a yard, and were left where they are
 */
public record ShelfCopy(int texts, List<String> leftOut) {
    private static final String TEXTS = ".*[.](yaml|csv|md|txt)";
    private static final String MADE_HERE = "papers/";

    /** Copies the list. */
    public ShelfCopy {
        leftOut = List.copyOf(leftOut);
    }

    /**
     * Copies all texts in one change. Texts that the other keeper has besides are taken away: it then holds the same yard.
     *
     * @param from where they are
     * @param to where they shall be
     * @param why kept beside the texts
     * @return what was copied
     * @throws IOException if a keeper refuses; nothing was copied then
     */
    public static ShelfCopy all(Shelf from, Shelf to, String why) throws IOException {
        Shelf still = from.still();
        List<String> leftOut = new ArrayList<>();
        int texts = 0;
        try (Writing writing = to.write(why)) {
            List<String> other = new ArrayList<>(to.marks().keySet());
            for (String name : from.marks().keySet()) {
                String text = text(still, name);
                if (text == null) {
                    leftOut.add(name);
                } else {
                    writing.put(name, text);
                    other.remove(name);
                    texts++;
                }
            }
            other.stream().filter(ShelfCopy::isText).forEach(writing::remove);
            writing.commit();
        }
        return new ShelfCopy(texts, leftOut);
    }

    private static boolean isText(String name) {
        return name.matches(TEXTS) && !name.startsWith(MADE_HERE);
    }

    private static @org.jspecify.annotations.Nullable String text(Shelf from, String name) throws IOException {
        if (!isText(name)) {
            return null;
        }
        try {
            return from.text(name).filter(t -> t.indexOf('\0') < 0).orElse(null);
        } catch (CharacterCodingException notText) {
            return null;
        }
    }
}

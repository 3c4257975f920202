package sternwright.app.files.shape;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.nodes.Node;

/**
 * What a value looks like in a file.
 *
 * @param <T> what it is read to
 */
public interface Shape<T> {
    /**
     * Reads a value; whatever is wrong is noted, not thrown.
     *
     * @param node where it stands
     * @param path the field path to it
     * @param reading the file being read
     * @return the value, null if it is wrong
     */
    @Nullable
    T read(Node node, Path path, Reading reading);

    /**
     * The value as a tree of maps, lists, texts, numbers and truth values.
     *
     * @param value the value
     * @return what a file says
     */
    Object write(T value);

    /**
     * The JSON Schema 2020-12 of it.
     *
     * @return keywords in order
     */
    Map<String, Object> schema();

    /**
     * What it is in plain words, as it follows "expected".
     *
     * @return a phrase such as {@code a number above 0}
     */
    String words();
}

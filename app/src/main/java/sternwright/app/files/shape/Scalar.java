package sternwright.app.files.shape;

import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.Tag;

/**
 * A single value on one line: text, date, truth value, one of a list of words.
 *
 * @param <T> what it is read to
 */
public final class Scalar<T> implements Shape<T> {
    private final String words;
    private final Set<Tag> tags;
    private final Function<String, @Nullable T> parse;
    private final Function<T, Object> write;
    private final Map<String, Object> schema;
    private final Function<String, String> advice;

    Scalar(
            String words,
            Set<Tag> tags,
            Function<String, @Nullable T> parse,
            Function<T, Object> write,
            Map<String, Object> schema,
            Function<String, String> advice) {
        this.words = words;
        this.tags = tags;
        this.parse = parse;
        this.write = write;
        this.schema = schema;
        this.advice = advice;
    }

    @Override
    public @Nullable T read(Node node, Path path, Reading reading) {
        String text = node instanceof ScalarNode scalar ? scalar.getValue() : "";
        T value = node instanceof ScalarNode && tags.contains(node.getTag()) ? parse.apply(text) : null;
        if (value == null) {
            boolean quotes = node instanceof ScalarNode
                    && !tags.contains(node.getTag())
                    && !Tag.NULL.equals(node.getTag())
                    && tags.contains(Tag.STR);
            reading.wrong(node, path, words, quotes ? "Write it in quotes: \"" + text + "\"." : advice.apply(text));
        }
        return value;
    }

    @Override
    public Object write(T value) {
        return write.apply(value);
    }

    @Override
    public Map<String, Object> schema() {
        return schema;
    }

    @Override
    public String words() {
        return words;
    }
}

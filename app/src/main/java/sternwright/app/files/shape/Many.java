package sternwright.app.files.shape;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/**
 * A list of values of one shape.
 *
 * @param <T> one value
 * @param <C> the collection it is read to
 */
public final class Many<T, C extends Collection<T>> implements Shape<C> {
    private final Shape<T> one;
    private final Function<List<T>, C> collect;
    private final boolean sorted;
    private final int least;
    private final int most;
    private final @Nullable Function<T, String> key;

    private Many(
            Shape<T> one,
            Function<List<T>, C> collect,
            boolean sorted,
            int least,
            int most,
            @Nullable Function<T, String> key) {
        this.one = one;
        this.collect = collect;
        this.sorted = sorted;
        this.least = least;
        this.most = most;
        this.key = key;
    }

    /**
     * A list in order.
     *
     * @param <T> one value
     * @param one its shape
     * @return the shape
     */
    public static <T> Many<T, List<T>> list(Shape<T> one) {
        return new Many<>(one, List::copyOf, false, 0, Integer.MAX_VALUE, null);
    }

    /**
     * A set; the same value twice is a problem.
     *
     * @param <T> one value
     * @param one its shape
     * @return the shape
     */
    public static <T> Many<T, Set<T>> set(Shape<T> one) {
        return new Many<>(one, LinkedHashSet::new, true, 0, Integer.MAX_VALUE, String::valueOf);
    }

    /**
     * The same with bounds on how many there are.
     *
     * @param fewest at least so many
     * @param highest at most so many
     * @return the shape
     */
    public Many<T, C> between(int fewest, int highest) {
        return new Many<>(one, collect, sorted, fewest, highest, key);
    }

    /**
     * The same where no two may have one key.
     *
     * @param id takes the key out of a value
     * @return the shape
     */
    public Many<T, C> uniqueBy(Function<T, String> id) {
        return new Many<>(one, collect, sorted, least, most, id);
    }

    @Override
    public @Nullable C read(Node node, Path path, Reading reading) {
        if (!(node instanceof SequenceNode sequence)) {
            reading.wrong(node, path, words(), "Start each on its own line with \"- \", or write [a, b].");
            return null;
        }
        List<Node> members = sequence.getValue();
        if (members.size() < least || members.size() > most) {
            reading.note(node, path, "found " + members.size() + " of them", words(), "");
            return null;
        }
        List<T> values = new ArrayList<>(members.size());
        Map<String, Integer> seen = new HashMap<>();
        for (int i = 0; i < members.size(); i++) {
            Path at = path.member(name(members.get(i), i));
            T value = one.read(members.get(i), at, reading);
            if (value != null) {
                noteTwin(value, members.get(i), at, seen, reading);
                values.add(value);
            }
        }
        return values.size() == members.size() ? collect.apply(values) : null;
    }

    private void noteTwin(T value, Node node, Path at, Map<String, Integer> seen, Reading reading) {
        if (key != null) {
            Integer first = seen.putIfAbsent(key.apply(value), Reading.line(node));
            if (first != null) {
                reading.note(
                        node,
                        at,
                        "\"" + key.apply(value) + "\" is given twice, first in line " + first,
                        "each once",
                        "Give the second another name or take it out.");
            }
        }
    }

    /** The shape of one value. */
    Shape<T> one() {
        return one;
    }

    /** A member is named by its id where it has one, else by its position. */
    static String name(Node member, int index) {
        if (member instanceof MappingNode mapping) {
            for (var entry : mapping.getValue()) {
                if (entry.getKeyNode() instanceof ScalarNode k
                        && k.getValue().equals("id")
                        && entry.getValueNode() instanceof ScalarNode id) {
                    return id.getValue();
                }
            }
        }
        return Integer.toString(index + 1);
    }

    @Override
    public Object write(C value) {
        var written = value.stream().map(one::write);
        return sorted ? written.sorted().toList() : written.toList();
    }

    @Override
    public Map<String, Object> schema() {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("type", "array");
        schema.put("items", one.schema());
        if (least > 0) {
            schema.put("minItems", least);
        }
        if (most < Integer.MAX_VALUE) {
            schema.put("maxItems", most);
        }
        if (sorted) {
            schema.put("uniqueItems", true);
        }
        return schema;
    }

    @Override
    public String words() {
        String count =
                least == most ? "of " + least + ", each " : least > 0 ? "of at least " + least + ", each " : "of ";
        return "a list " + count + one.words();
    }
}

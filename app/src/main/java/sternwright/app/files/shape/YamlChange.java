package sternwright.app.files.shape;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.common.FlowStyle;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import org.snakeyaml.engine.v2.nodes.Tag;

/**
 * Changes a YAML text where what it says has changed, and nowhere else: comments, order, quotes and line ends of all other lines
 * stay as a person wrote them. What was changed is read again and must say what was asked for.
 */
public final class YamlChange {
    private final YamlSplices splices;

    private YamlChange(String text) {
        this.splices = new YamlSplices(text);
    }

    /**
     * Changes a text.
     *
     * @param <T> what it is read to
     * @param text the whole file, which can be read
     * @param shape its shape
     * @param after what it shall say; whether its figures can be is asked by whoever reads the new text
     * @return the new text; empty if the text is written in a way that only a person can change, such as with anchors
     */
    public static <T> Optional<String> of(String text, Shape<T> shape, T after) {
        Node top = Yaml.compose(text, "", new ArrayList<>());
        if (top == null) {
            return Optional.empty();
        }
        Object now = shape.write(after);
        YamlChange change = new YamlChange(text);
        change.to(shape, top, now);
        return change.splices.applied().filter(changed -> says(changed, shape, now));
    }

    /** A text that cannot be read is for its reader to judge; one that can must say what was asked for. */
    private static <T> boolean says(String changed, Shape<T> shape, Object now) {
        Node top = Yaml.compose(changed, "", new ArrayList<>());
        if (top == null) {
            return false;
        }
        Object tree = tree(shape, top);
        return tree == null || tree.equals(now);
    }

    private static <T> @Nullable Object tree(Shape<T> shape, Node node) {
        T value = Tag.NULL.equals(node.getTag()) ? null : shape.read(node, Path.TOP, new Reading("", LocalDate.MAX));
        return value == null ? null : shape.write(value);
    }

    private void to(Shape<?> shape, Node node, Object now) {
        if (now.equals(tree(shape, node))) {
            return;
        }
        if (shape instanceof Block<?> block
                && node instanceof MappingNode m
                && inBlock(m)
                && now instanceof Map<?, ?> fields) {
            block(block, m, fields);
        } else if (shape instanceof Many<?, ?> many
                && node instanceof SequenceNode s
                && inBlock(s)
                && now instanceof List<?> members
                && !members.isEmpty()) {
            new YamlMembers(splices, s, many.one()).to(members, this::to);
        } else {
            splices.replace(node, YamlText.inFlow(now));
        }
    }

    private static boolean inBlock(org.snakeyaml.engine.v2.nodes.CollectionNode<?> node) {
        return node.getFlowStyle() == FlowStyle.BLOCK && !node.getValue().isEmpty();
    }

    private void block(Block<?> block, MappingNode mapping, Map<?, ?> now) {
        Map<String, NodeTuple> entries = new HashMap<>();
        mapping.getValue().forEach(t -> entries.put(name(t), t));
        List<NodeTuple> kept = new ArrayList<>(mapping.getValue());
        kept.removeIf(t -> goes(block, t, now));
        if (kept.isEmpty()) {
            splices.replace(mapping, YamlText.inFlow(now));
            return;
        }
        NodeTuple before = kept.get(kept.size() - 1);
        for (Field<?, ?> field : block.fields()) {
            NodeTuple entry = entries.get(field.name);
            Object value = now.get(field.name);
            if (entry == null && value != null) {
                splices.insertEntry(before, field.name, value);
            } else if (entry != null && kept.contains(entry)) {
                entry(field, entry, value);
                before = entry;
            } else if (entry != null) {
                splices.removeEntry(mapping, entry);
            }
        }
    }

    /** Whether a field is taken out: it is left out of what the text shall say, and has no figure that could be said instead. */
    private static boolean goes(Block<?> block, NodeTuple entry, Map<?, ?> now) {
        return block.fields().stream()
                .filter(f -> f.name.equals(name(entry)) && now.get(f.name) == null)
                .anyMatch(f -> {
                    Object usual = usual(f);
                    return !Objects.equals(tree(f.shape, entry.getValueNode()), usual)
                            && (usual == null || usual instanceof List<?>);
                });
    }

    private void entry(Field<?, ?> field, NodeTuple entry, @Nullable Object value) {
        Object usual = usual(field);
        Object wanted = value == null ? usual : value;
        Object was = tree(field.shape, entry.getValueNode());
        if (wanted != null && !Objects.equals(was, value) && !(value == null && Objects.equals(was, usual))) {
            to(field.shape, entry.getValueNode(), wanted);
        }
    }

    /** What a field says if it is left out. */
    private static <V> @Nullable Object usual(Field<?, V> field) {
        return field.fallback == null ? null : field.shape.write(field.fallback);
    }

    private static String name(NodeTuple entry) {
        return entry.getKeyNode() instanceof ScalarNode key ? key.getValue() : "";
    }

    /** Changes of one member of a list. */
    interface Inner {
        /** Changes what a node says. */
        void to(Shape<?> shape, Node node, Object now);
    }

    /** The tree of a member, as its shape writes it. */
    static @Nullable Object member(Shape<?> one, Node node) {
        return tree(one, node);
    }
}

package sternwright.app.files.shape;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.Tag;
import sternwright.app.files.problem.KnownNames;

/**
 * A block of named fields that is read to a record.
 *
 * @param <R> the record
 */
public final class Block<R> implements Shape<R> {
    private final String name;
    private final String meaning;
    private final Function<Values<R>, R> maker;
    private final List<Field<R, ?>> fields;

    private Block(String name, String meaning, Function<Values<R>, R> maker, List<Field<R, ?>> fields) {
        this.name = name;
        this.meaning = meaning;
        this.maker = maker;
        this.fields = fields;
    }

    /**
     * Describes a block.
     *
     * @param <R> the record
     * @param name what it is, as a person says it, such as {@code a part}
     * @param meaning for schema and documentation
     * @param maker makes the record; its {@link IllegalArgumentException} is shown to the person
     * @param fields in the order they are written
     * @return the shape
     */
    @SafeVarargs
    public static <R> Block<R> of(String name, String meaning, Function<Values<R>, R> maker, Field<R, ?>... fields) {
        return of(name, meaning, maker, List.of(fields));
    }

    /**
     * Describes a block.
     *
     * @param <R> the record
     * @param name what it is, as a person says it
     * @param meaning for schema and documentation
     * @param maker makes the record
     * @param fields in the order they are written
     * @return the shape
     */
    public static <R> Block<R> of(String name, String meaning, Function<Values<R>, R> maker, List<Field<R, ?>> fields) {
        return new Block<>(name, meaning, maker, List.copyOf(fields));
    }

    /**
     * The fields in the order they are written.
     *
     * @return the fields
     */
    public List<Field<R, ?>> fields() {
        return fields;
    }

    /**
     * What the block means.
     *
     * @return a phrase
     */
    public String meaning() {
        return meaning;
    }

    @Override
    public @Nullable R read(Node node, Path path, Reading reading) {
        if (!(node instanceof MappingNode mapping)) {
            reading.wrong(node, path, words(), "Write its fields below, indented, one a line.");
            return null;
        }
        int before = reading.count();
        Map<String, Node> byName = byName(mapping, path, reading);
        @Nullable Node[] nodes = new Node[fields.size()];
        for (int i = 0; i < nodes.length; i++) {
            nodes[i] = byName.get(fields.get(i).name);
        }
        R made = make(nodes, mapping, path, reading);
        return reading.count() > before ? null : made;
    }

    /**
     * Makes the record from one node for each field, as a row of a table gives them.
     *
     * @param nodes in the order of the fields, null where nothing is given
     * @param whole the row, for its line
     * @param path the way to the row
     * @param reading the file being read
     * @return the record, null if anything is wrong
     */
    public @Nullable R make(@Nullable Node[] nodes, Node whole, Path path, Reading reading) {
        int before = reading.count();
        @Nullable Object[] values = new Object[nodes.length];
        for (int i = 0; i < nodes.length; i++) {
            values[i] = value(fields.get(i), nodes[i], whole, path, reading);
        }
        if (reading.count() > before) {
            return null;
        }
        try {
            return maker.apply(new Values<>(fields, values));
        } catch (IllegalArgumentException wrong) {
            reading.note(whole, path, String.valueOf(wrong.getMessage()), "", "");
            return null;
        }
    }

    private Map<String, Node> byName(MappingNode mapping, Path path, Reading reading) {
        Map<String, Node> byName = new HashMap<>();
        for (NodeTuple entry : mapping.getValue()) {
            Node key = entry.getKeyNode();
            String field = key instanceof ScalarNode scalar ? scalar.getValue() : "?";
            if (byName.containsKey(field)) {
                reading.note(key, path.field(field), "given twice", "", "Keep one of the two.");
            } else if (fields.stream().noneMatch(f -> f.name.equals(field))) {
                List<String> known = fields.stream().map(f -> f.name).toList();
                reading.note(
                        key, path.field(field), "unknown field", "a field of " + name, KnownNames.advice(field, known));
            }
            byName.put(field, entry.getValueNode());
        }
        return byName;
    }

    private static <R, V> @Nullable V value(
            Field<R, V> field, @Nullable Node node, Node whole, Path path, Reading reading) {
        boolean empty = node == null || Tag.NULL.equals(node.getTag());
        if (node != null && (!empty || field.required)) {
            return field.shape.read(node, path.field(field.name), reading);
        }
        if (field.required) {
            String advice = "Add it: " + field.meaning + ".";
            reading.note(whole, path.field(field.name), "missing", field.shape.words(), advice);
        }
        return field.fallback;
    }

    @Override
    public Object write(R value) {
        Map<String, Object> tree = new LinkedHashMap<>();
        fields.forEach(f -> put(tree, f, value));
        return tree;
    }

    private static <R, V> void put(Map<String, Object> tree, Field<R, V> field, R owner) {
        V value = field.getter.from(owner);
        if (value != null && !value.equals(field.fallback)) {
            tree.put(field.name, field.shape.write(value));
        }
    }

    @Override
    public Map<String, Object> schema() {
        Map<String, Object> properties = new LinkedHashMap<>();
        fields.forEach(f -> properties.put(f.name, fieldSchema(f)));
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("type", "object");
        schema.put("description", meaning);
        schema.put("properties", properties);
        schema.put(
                "required",
                fields.stream().filter(f -> f.required).map(f -> f.name).toList());
        schema.put("additionalProperties", false);
        return schema;
    }

    /** A field that is not required may also be left empty, which says "not known". */
    private static <R, V> Map<String, Object> fieldSchema(Field<R, V> field) {
        Map<String, Object> schema = new LinkedHashMap<>(field.shape.schema());
        schema.put("description", field.meaning);
        if (!field.required) {
            schema.put("type", List.of(String.valueOf(schema.get("type")), "null"));
            if (schema.get("enum") instanceof List<?> names) {
                List<@Nullable Object> withNull = new ArrayList<>(names);
                withNull.add(null);
                schema.put("enum", withNull);
            }
        }
        if (field.fallback != null) {
            schema.put("default", field.shape.write(field.fallback));
        }
        return schema;
    }

    @Override
    public String words() {
        String must = fields.stream().filter(f -> f.required).map(f -> f.name).collect(Collectors.joining(", "));
        return name + (must.isEmpty() ? "" : " with " + must);
    }
}

package sternwright.app.files.shape;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import org.snakeyaml.engine.v2.schema.CoreSchema;
import sternwright.app.files.problem.Problem;

/** YAML 1.2 text to nodes that know their lines. */
public final class Yaml {
    private static final int LARGEST = 64 * 1024 * 1024;

    private Yaml() {}

    /**
     * Composes a file of one document.
     *
     * @param text the whole file
     * @param file its name as the person knows it
     * @param problems takes what is broken
     * @return the top node, null if the file is broken or empty
     */
    public static @Nullable Node compose(String text, String file, List<Problem> problems) {
        LoadSettings settings = LoadSettings.builder()
                .setLabel(file)
                .setSchema(new CoreSchema())
                .setCodePointLimit(LARGEST)
                .build();
        try {
            Node top = new Compose(settings).composeString(text).orElse(null);
            if (top == null) {
                problems.add(new Problem(file, 0, "", "the file is empty", "its fields, one a line", ""));
            }
            return top;
        } catch (MarkedYamlEngineException broken) {
            int line = broken.getProblemMark().map(m -> m.getLine() + 1).orElse(0);
            problems.add(broken(file, line, broken.getProblem()));
        } catch (YamlEngineException broken) {
            problems.add(broken(file, 0, String.valueOf(broken.getMessage())));
        }
        return null;
    }

    private static Problem broken(String file, int line, String what) {
        return new Problem(
                file,
                line,
                "",
                "broken YAML: " + what.lines().findFirst().orElse(""),
                "",
                "Look at indentation, colons, brackets and quotes in this line and the one before.");
    }

    /**
     * Reads a file of one shape.
     *
     * @param <T> what it is read to
     * @param text the whole file
     * @param shape its shape
     * @param reading the file being read
     * @param problems takes everything that is wrong
     * @return value and nodes; null if anything is wrong
     */
    public static <T> @Nullable Read<T> read(String text, Shape<T> shape, Reading reading, List<Problem> problems) {
        Node top = compose(text, reading.file(), problems);
        if (top == null) {
            return null;
        }
        T value = shape.read(top, Path.TOP, reading);
        problems.addAll(reading.problems());
        return value == null ? null : new Read<>(value, top);
    }

    /**
     * A value that was read, with the nodes it was read from.
     *
     * @param <T> what it is
     * @param value the value
     * @param top the top node of its file
     */
    public record Read<T>(T value, Node top) {
        /**
         * The line of a field, for messages about what it refers to.
         *
         * @param steps field names and positions in lists counted from 0
         * @return the line counted from 1; of the nearest block around it if the field was left out
         */
        public int line(Object... steps) {
            Node at = top;
            for (Object step : steps) {
                Node next = step instanceof Integer i ? member(at, i) : field(at, String.valueOf(step));
                if (next == null) {
                    break;
                }
                at = next;
            }
            return Reading.line(at);
        }

        /**
         * The path of a field as messages write it.
         *
         * @param steps field names and positions in lists counted from 0
         * @return the path, members named by their ids where they have one
         */
        public String path(Object... steps) {
            Path path = Path.TOP;
            Node at = top;
            for (Object step : steps) {
                Node next = null;
                if (step instanceof Integer i) {
                    next = at == null ? null : member(at, i);
                    path = path.member(next == null ? Integer.toString(i + 1) : Many.name(next, i));
                } else {
                    next = at == null ? null : field(at, String.valueOf(step));
                    path = path.field(String.valueOf(step));
                }
                at = next;
            }
            return path.toString();
        }

        private static @Nullable Node member(Node node, int index) {
            return node instanceof SequenceNode list && index < list.getValue().size()
                    ? list.getValue().get(index)
                    : null;
        }

        private static @Nullable Node field(Node node, String name) {
            if (node instanceof MappingNode mapping) {
                for (NodeTuple entry : mapping.getValue()) {
                    if (entry.getKeyNode() instanceof ScalarNode key
                            && key.getValue().equals(name)) {
                        return entry.getValueNode();
                    }
                }
            }
            return null;
        }
    }

    /**
     * The published schema of a file kind.
     *
     * @param id address of the schema
     * @param title what kind of file
     * @param shape the shape of the whole file
     * @return keywords in order
     */
    public static Map<String, Object> published(String id, String title, Shape<?> shape) {
        Map<String, Object> schema = new java.util.LinkedHashMap<>();
        schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        schema.put("$id", id);
        schema.put("title", title);
        schema.putAll(shape.schema());
        return schema;
    }
}

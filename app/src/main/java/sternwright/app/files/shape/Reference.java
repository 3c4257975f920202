package sternwright.app.files.shape;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.nodes.Node;

/**
 * A short name that stands for a thing in another file. It is noted as it is read, so that it can be looked up even if other
 * fields of the same file are wrong.
 *
 * @param what the kind of thing, as a person says it
 */
record Reference(String what) implements Shape<String> {
    private static final Shape<String> ID = Shapes.id();

    @Override
    public @Nullable String read(Node node, Path path, Reading reading) {
        String name = ID.read(node, path, reading);
        if (name != null) {
            reading.refer(what, name, node, path);
        }
        return name;
    }

    @Override
    public Object write(String value) {
        return ID.write(value);
    }

    @Override
    public Map<String, Object> schema() {
        return ID.schema();
    }

    @Override
    public String words() {
        return ID.words();
    }
}

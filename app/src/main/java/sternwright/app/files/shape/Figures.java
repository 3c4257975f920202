package sternwright.app.files.shape;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;

/** Figures by name, names free. */
public record Figures() implements Shape<Map<String, Double>> {
    @Override
    public @Nullable Map<String, Double> read(Node node, Path path, Reading reading) {
        if (!(node instanceof MappingNode mapping)) {
            reading.wrong(node, path, words(), "Write one a line as \"name: number\".");
            return null;
        }
        Map<String, Double> figures = new LinkedHashMap<>();
        boolean good = true;
        for (NodeTuple entry : mapping.getValue()) {
            String name = entry.getKeyNode() instanceof ScalarNode key ? key.getValue() : "?";
            Double value = Numbers.any().read(entry.getValueNode(), path.field(name), reading);
            if (value != null && figures.put(name, value) != null) {
                reading.note(entry.getKeyNode(), path.field(name), "given twice", "", "Keep one of the two.");
                good = false;
            }
            good &= value != null;
        }
        return good ? figures : null;
    }

    @Override
    public Object write(Map<String, Double> value) {
        Map<String, Object> tree = new TreeMap<>();
        value.forEach((name, figure) -> tree.put(name, Numbers.any().write(figure)));
        return tree;
    }

    @Override
    public Map<String, Object> schema() {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("type", "object");
        schema.put("additionalProperties", Map.of("type", "number"));
        return schema;
    }

    @Override
    public String words() {
        return "figures by name";
    }
}

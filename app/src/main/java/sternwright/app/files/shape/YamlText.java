package sternwright.app.files.shape;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.DumpSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Present;
import org.snakeyaml.engine.v2.api.lowlevel.Serialize;
import org.snakeyaml.engine.v2.comments.CommentLine;
import org.snakeyaml.engine.v2.comments.CommentType;
import org.snakeyaml.engine.v2.common.FlowStyle;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import org.snakeyaml.engine.v2.nodes.Tag;
import org.snakeyaml.engine.v2.schema.CoreSchema;

/** Writes a tree as YAML 1.2 with comments for the person who goes on writing by hand. */
public final class YamlText {
    private static final int WIDTH = 120;
    /** A member of a list with no more fields than this is written on one line. */
    private static final int SMALL = 4;

    /** What to say about a field. */
    public interface Comments {
        /**
         * Lines above a field.
         *
         * @param path the field, members of lists named by id or by position counted from 1
         * @return lines; empty for none
         */
        List<String> above(Path path);

        /**
         * A remark behind a value.
         *
         * @param path the field
         * @return the remark; empty for none
         */
        String behind(Path path);
    }

    /** Says nothing. */
    public static final Comments NONE = new Comments() {
        @Override
        public List<String> above(Path path) {
            return List.of();
        }

        @Override
        public String behind(Path path) {
            return "";
        }
    };

    private final Comments comments;
    private final boolean flow;

    private YamlText(Comments comments, boolean flow) {
        this.comments = comments;
        this.flow = flow;
    }

    /**
     * Writes a tree.
     *
     * @param tree what {@link Shape#write} gave
     * @param comments what to say about it
     * @return a YAML document that ends with a line end
     */
    public static String of(Object tree, Comments comments) {
        return emitted(new YamlText(comments, false).node(tree, Path.TOP), WIDTH);
    }

    /** A value as it stands within a line: lists in brackets, blocks in braces. */
    static String inFlow(Object tree) {
        String list = emitted(new YamlText(NONE, true).node(List.of(tree), Path.TOP), Integer.MAX_VALUE)
                .strip();
        return list.substring(1, list.length() - 1);
    }

    private static String emitted(Node node, int width) {
        DumpSettings settings = DumpSettings.builder()
                .setSchema(new CoreSchema())
                .setDumpComments(true)
                .setIndent(2)
                .setIndicatorIndent(2)
                .setIndentWithIndicator(true)
                .setWidth(width)
                .setSplitLines(false)
                .build();
        return new Present(settings)
                .emitToString(new Serialize(settings).serializeOne(node).iterator());
    }

    private Node node(Object value, Path path) {
        if (value instanceof Map<?, ?> map) {
            return mapping(map, path);
        }
        if (value instanceof List<?> list) {
            return sequence(list, path);
        }
        Tag tag = value instanceof Boolean ? Tag.BOOL : value instanceof Number ? Tag.FLOAT : Tag.STR;
        String text = value instanceof Double figure ? figure(figure) : value.toString();
        Tag own = tag.equals(Tag.FLOAT) && !text.contains(".") ? Tag.INT : tag;
        ScalarStyle style = text.length() > WIDTH && !flow ? ScalarStyle.FOLDED : ScalarStyle.PLAIN;
        ScalarNode scalar = new ScalarNode(own, text, style);
        String remark = comments.behind(path);
        if (!remark.isEmpty()) {
            scalar.setInLineComments(List.of(line(remark, CommentType.IN_LINE)));
        }
        return scalar;
    }

    private static String figure(double value) {
        return new BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString();
    }

    private Node mapping(Map<?, ?> map, Path path) {
        boolean small = path.inList()
                && map.size() <= SMALL
                && map.values().stream().noneMatch(YamlText::nested)
                && map.keySet().stream()
                        .allMatch(k ->
                                comments.behind(path.field(String.valueOf(k))).isEmpty());
        List<NodeTuple> tuples = new ArrayList<>();
        for (Map.Entry<?, ?> entry : map.entrySet()) {
            Path at = path.field(String.valueOf(entry.getKey()));
            ScalarNode key = new ScalarNode(Tag.STR, String.valueOf(entry.getKey()), ScalarStyle.PLAIN);
            boolean besideDash = path.inList() && tuples.isEmpty();
            List<String> above = small || besideDash ? List.of() : comments.above(at);
            if (!above.isEmpty()) {
                key.setBlockComments(above.stream().map(YamlText::above).toList());
            }
            tuples.add(new NodeTuple(key, node(entry.getValue(), at)));
        }
        return new MappingNode(Tag.MAP, tuples, small || flow ? FlowStyle.FLOW : FlowStyle.BLOCK);
    }

    private Node sequence(List<?> list, Path path) {
        List<Node> nodes = new ArrayList<>();
        for (int i = 0; i < list.size(); i++) {
            String name = list.get(i) instanceof Map<?, ?> map && map.get("id") != null
                    ? String.valueOf(map.get("id"))
                    : Integer.toString(i + 1);
            Path at = path.member(name);
            Node node = node(list.get(i), at);
            List<String> above = comments.above(at);
            if (!above.isEmpty()) {
                node.setBlockComments(above.stream().map(YamlText::above).toList());
            }
            nodes.add(node);
        }
        boolean scalars = list.stream().noneMatch(YamlText::nested);
        return new SequenceNode(Tag.SEQ, nodes, scalars || flow ? FlowStyle.FLOW : FlowStyle.BLOCK);
    }

    private static boolean nested(Object value) {
        return value instanceof Map || value instanceof List;
    }

    private static CommentLine above(String text) {
        return text.isEmpty() ? line("", CommentType.BLANK_LINE) : line(text, CommentType.BLOCK);
    }

    private static CommentLine line(String text, CommentType type) {
        return new CommentLine(
                Optional.empty(), Optional.empty(), type == CommentType.BLANK_LINE ? "" : " " + text, type);
    }
}

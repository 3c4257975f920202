package sternwright.app.files.shape;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.snakeyaml.engine.v2.common.FlowStyle;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.nodes.CollectionNode;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/** Stretches of a text that are replaced, found by the marks that the YAML reader left on its nodes. */
final class YamlSplices {
    private final String text;
    private final String lineEnd;
    private final List<Splice> splices = new ArrayList<>();
    private boolean possible = true;

    /** What stands from one place to another is replaced. */
    private record Splice(int from, int to, String by) {}

    YamlSplices(String text) {
        this.text = text;
        this.lineEnd = text.contains("\r\n") ? "\r\n" : "\n";
    }

    /** The new text; empty if something could not be found in the old one. */
    Optional<String> applied() {
        if (!possible) {
            return Optional.empty();
        }
        StringBuilder out = new StringBuilder();
        int at = 0;
        for (Splice s :
                splices.stream().sorted(Comparator.comparingInt(Splice::from)).toList()) {
            if (s.from > at) {
                out.append(text, at, s.from);
            }
            out.append(s.by);
            at = Math.max(at, s.to);
        }
        return Optional.of(out.append(text, at, text.length()).toString());
    }

    void replace(Node node, String by) {
        int from = start(node);
        int to = Math.max(from, end(node));
        splices.add(new Splice(from, to, from == to ? " " + by : by));
    }

    /** A field below another one of its block. */
    void insertEntry(NodeTuple before, String name, Object value) {
        String indent = " ".repeat(column(before.getKeyNode()));
        insertBelow(end(before.getValueNode()), lines(YamlText.of(Map.of(name, value), YamlText.NONE), indent));
    }

    /** Whole lines go in between lines, so that whatever is taken out beside them leaves both whole. */
    private void insertBelow(int end, String lines) {
        int at = nextLine(end);
        boolean endless = at == text.length() && !text.endsWith("\n");
        splices.add(new Splice(at, at, endless ? lineEnd + lines : lines + lineEnd));
    }

    /** Takes a field out with its line; beside the dash of a list the next field moves up. */
    void removeEntry(MappingNode mapping, NodeTuple entry) {
        int key = start(entry.getKeyNode());
        int from = lineStart(key);
        int next = mapping.getValue().indexOf(entry) + 1;
        if (text.substring(from, key).isBlank()) {
            splices.add(new Splice(from, nextLine(end(entry.getValueNode())), ""));
        } else if (next < mapping.getValue().size()) {
            splices.add(new Splice(key, start(mapping.getValue().get(next).getKeyNode()), ""));
        } else {
            possible = false;
        }
    }

    /** A member of a list below or above another one. */
    void insertMember(Node beside, boolean below, Object value) {
        String indent = beforeDash(beside);
        String member = value instanceof Map
                ? YamlText.of(List.of(value), YamlText.NONE).stripTrailing().stripIndent()
                : "- " + YamlText.inFlow(value);
        String lines = lines(member, indent);
        if (below) {
            insertBelow(end(beside), lines);
        } else {
            int at = lineStart(start(beside));
            splices.add(new Splice(at, at, lines + lineEnd));
        }
    }

    void removeMember(Node node) {
        beforeDash(node);
        splices.add(new Splice(lineStart(start(node)), nextLine(end(node)), ""));
    }

    /** What stands before the dash of a member; a dash on a line of its own is for a person to change. */
    private String beforeDash(Node node) {
        String before = text.substring(lineStart(start(node)), start(node));
        possible &= before.matches("\\s*- +");
        int dash = before.indexOf('-');
        return dash < 0 ? "" : before.substring(0, dash);
    }

    private String lines(String yaml, String indent) {
        return yaml.stripTrailing().lines().map(l -> indent + l).collect(Collectors.joining(lineEnd));
    }

    private int start(Node node) {
        return node.getStartMark().map(this::offset).orElse(0);
    }

    /** Where a node ends: a block ends with the last value in it, not with the comments below. */
    private int end(Node node) {
        if (node instanceof CollectionNode<?> block
                && block.getFlowStyle() == FlowStyle.BLOCK
                && !block.getValue().isEmpty()) {
            Node last = block instanceof MappingNode m
                    ? m.getValue().get(m.getValue().size() - 1).getValueNode()
                    : ((SequenceNode) block).getValue().get(block.getValue().size() - 1);
            return end(last);
        }
        int end = node.getEndMark().map(this::offset).orElse(0);
        while (end > start(node) && Character.isWhitespace(text.charAt(end - 1))) {
            end--;
        }
        return end;
    }

    private int offset(Mark mark) {
        return text.offsetByCodePoints(0, mark.getIndex());
    }

    private static int column(Node node) {
        return node.getStartMark().map(Mark::getColumn).orElse(0);
    }

    private int lineStart(int at) {
        return text.lastIndexOf('\n', at - 1) + 1;
    }

    private int nextLine(int at) {
        int end = text.indexOf('\n', at);
        return end < 0 ? text.length() : end + 1;
    }
}

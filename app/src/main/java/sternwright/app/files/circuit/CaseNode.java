package sternwright.app.files.circuit;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import sternwright.app.files.problem.Problem;
import tools.jackson.databind.JsonNode;

/** One object of a circuit file, with its place; notes what is missing or of the wrong kind and reads on. */
final class CaseNode {
    private final String file;
    private final String path;
    private final JsonNode node;
    private final List<Problem> problems;

    CaseNode(String file, String path, JsonNode node, List<Problem> problems) {
        this.file = file;
        this.path = path;
        this.node = node;
        this.problems = problems;
    }

    boolean has(String field) {
        return node.has(field);
    }

    String text(String field) {
        JsonNode value = node.get(field);
        if (value == null || !value.isString() || value.asString().isBlank()) {
            note(field, found(value), "a name in quotation marks", "");
            return "";
        }
        return value.asString();
    }

    /** A text that may be left out. */
    String textOr(String field, String otherwise) {
        JsonNode value = node.get(field);
        return value == null || value.isNull() ? otherwise : text(field);
    }

    double number(String field, String unit) {
        JsonNode value = node.get(field);
        if (value == null || !value.isNumber()) {
            String advice =
                    value != null && value.isString() ? "Write it without quotation marks and without the unit." : "";
            note(field, found(value), "a number" + (unit.isEmpty() ? "" : " in " + unit), advice);
            return Double.NaN;
        }
        return value.asDouble();
    }

    /** A number that may be null or left out. */
    double numberOr(String field, String unit, double otherwise) {
        JsonNode value = node.get(field);
        return value == null || value.isNull() ? otherwise : number(field, unit);
    }

    int whole(String field) {
        double value = number(field, "");
        if (!Double.isNaN(value) && value != Math.rint(value)) {
            note(field, Double.toString(value), "a whole number", "");
        }
        return Double.isNaN(value) ? 1 : (int) value;
    }

    /** The objects of a list; a list that may be left out is empty then. */
    List<CaseNode> list(String field, boolean mayBeMissing) {
        JsonNode value = node.get(field);
        List<CaseNode> items = new ArrayList<>();
        if (value == null || value.isNull()) {
            if (!mayBeMissing) {
                note(field, "nothing", "a list", "");
            }
            return items;
        }
        if (!value.isArray()) {
            note(field, found(value), "a list in square brackets", "");
            return items;
        }
        int n = 0;
        for (JsonNode item : value) {
            String name = item.has("id") ? item.get("id").asString() : Integer.toString(++n);
            CaseNode child = new CaseNode(file, at(field) + "[" + name + "]", item, problems);
            if (item.isObject()) {
                items.add(child);
            } else {
                problems.add(new Problem(file, 0, child.path, found(item), "an object in curly brackets", ""));
            }
        }
        return items;
    }

    void note(String field, String found, String expected, String advice) {
        problems.add(new Problem(file, 0, at(field), found, expected, advice));
    }

    private String at(String field) {
        return path.isEmpty() ? field : path + "." + field;
    }

    private static String found(@Nullable JsonNode value) {
        return value == null ? "nothing stands here" : value.toString();
    }
}

package sternwright.app.files.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import sternwright.app.files.shape.Numbers;
import sternwright.app.files.shape.Path;
import sternwright.app.files.shape.Reading;
import sternwright.app.files.shape.Shape;
import sternwright.history.TakenReading;

/** Readings in one cell: {@code anode-remaining=45 %; drip=3 1/min}. */
public final class ReadingsShape implements Shape<List<TakenReading>> {
    private static final Pattern ONE = Pattern.compile(
            "([a-z0-9][a-z0-9._-]*)\\s*=\\s*([-+]?[0-9]+(?:\\.[0-9]+)?(?:[eE][-+]?[0-9]+)?)\\s*([^;=]*)");
    private static final Pattern ANSWER =
            Pattern.compile("([a-z0-9][a-z0-9._-]*)\\s*=\\s*(yes|no)", Pattern.CASE_INSENSITIVE);

    @Override
    public @Nullable List<TakenReading> read(Node node, Path path, Reading reading) {
        List<TakenReading> taken = new ArrayList<>();
        String text = node instanceof ScalarNode scalar ? scalar.getValue() : "";
        for (String one : text.split(";", -1)) {
            if (!one.isBlank()) {
                TakenReading read = parse(one.strip());
                if (read == null) {
                    reading.note(node, path, "found \"" + one.strip() + "\"", words(), advice(one));
                    return null;
                }
                taken.add(read);
            }
        }
        return taken;
    }

    /**
     * One reading.
     *
     * @param text as {@code name=value unit}, or {@code name=yes}
     * @return the reading, null if the text is not one
     */
    public static @Nullable TakenReading parse(String text) {
        Matcher answer = ANSWER.matcher(text);
        if (answer.matches()) {
            return new TakenReading(answer.group(1), answer.group(2).equalsIgnoreCase("yes") ? 1 : 0, "1");
        }
        Matcher m = ONE.matcher(text);
        return m.matches()
                ? new TakenReading(
                        m.group(1), Double.parseDouble(m.group(2)), m.group(3).strip())
                : null;
    }

    private static String advice(String one) {
        return one.matches(".*=\\s*-?[0-9]+,[0-9]+.*")
                ? "Write a decimal point."
                : "Separate readings with semicolons.";
    }

    @Override
    public Object write(List<TakenReading> value) {
        return value.stream()
                .map(r -> r.name() + "=" + Numbers.any().write(r.value())
                        + (r.unit().isEmpty() ? "" : " " + r.unit()))
                .collect(Collectors.joining("; "));
    }

    @Override
    public Map<String, Object> schema() {
        return Map.of("type", "string");
    }

    @Override
    public String words() {
        return "readings such as \"anode-remaining=45 %; drip=3 1/min\"";
    }
}

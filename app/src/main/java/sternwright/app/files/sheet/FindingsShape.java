package sternwright.app.files.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import sternwright.app.files.shape.Path;
import sternwright.app.files.shape.Reading;
import sternwright.app.files.shape.Shape;
import sternwright.finding.Severity;
import sternwright.history.Finding;

/** What readings meant, in one cell: {@code anode-remaining=act 45 %, should be at least 50 %. | drips=fine ...}. */
final class FindingsShape implements Shape<List<Finding>> {
    private static final String BETWEEN = " | ";
    private static final Pattern ONE =
            Pattern.compile("([a-z0-9][a-z0-9._-]*)\\s*=\\s*(fine|watch|act|unsafe)(?:\\s+(.*))?");

    @Override
    public @Nullable List<Finding> read(Node node, Path path, Reading reading) {
        List<Finding> findings = new ArrayList<>();
        String text = node instanceof ScalarNode scalar ? scalar.getValue() : "";
        for (String one : text.split("\\|", -1)) {
            if (one.isBlank()) {
                continue;
            }
            Matcher m = ONE.matcher(one.strip());
            if (!m.matches()) {
                reading.note(
                        node,
                        path,
                        "found \"" + one.strip() + "\"",
                        words(),
                        "Separate findings with upright strokes.");
                return null;
            }
            String why = m.group(3);
            findings.add(new Finding(
                    m.group(1), Severity.valueOf(m.group(2).toUpperCase(Locale.ROOT)), why == null ? "" : why));
        }
        return findings;
    }

    @Override
    public Object write(List<Finding> value) {
        return value.stream()
                .map(f -> f.reading() + "=" + f.severity().name().toLowerCase(Locale.ROOT)
                        + (f.why().isEmpty() ? "" : " " + f.why().replace('|', '/')))
                .collect(Collectors.joining(BETWEEN));
    }

    @Override
    public Map<String, Object> schema() {
        return Map.of("type", "string");
    }

    @Override
    public String words() {
        return "findings such as \"anode-remaining=act 45 %, should be at least 50 %.\"";
    }
}

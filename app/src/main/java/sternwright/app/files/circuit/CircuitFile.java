package sternwright.app.files.circuit;

import java.io.IOException;
import java.nio.charset.MalformedInputException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.problem.Problem;
import sternwright.protection.circuit.Body;
import sternwright.protection.circuit.Circuit;
import sternwright.protection.circuit.CircuitCheck;
import sternwright.protection.circuit.CurrentSource;
import sternwright.protection.circuit.Link;
import sternwright.protection.circuit.MutualResistance;
import sternwright.protection.circuit.Reaction;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * A circuit read from a file.
 *
 * @param name its name, or the file's where it has none
 * @param title one line, may be empty
 * @param circuit the circuit
 */
public record CircuitFile(String name, String title, Circuit circuit) {
    /** The schema that is read. */
    public static final String SCHEMA = "protection-case-1";

    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    /**
     * Reads a file.
     *
     * @param path the file
     * @return the circuit
     * @throws BadInput with every problem: of the file, of its form, and of the circuit that it describes
     */
    public static CircuitFile read(Path path) {
        String file = path.toString();
        JsonNode root = tree(path, file);
        List<Problem> problems = new ArrayList<>();
        CaseNode node = new CaseNode(file, "", root, problems);
        if (!root.isObject()) {
            throw BadInput.of(
                    file, "it holds no object", "a circuit of schema " + SCHEMA, "Begin it with { and \"schema\".");
        }
        if (!SCHEMA.equals(node.textOr("schema", ""))) {
            node.note(
                    "schema",
                    node.has("schema") ? root.get("schema").toString() : "nothing stands here",
                    "\"" + SCHEMA + "\"",
                    "");
        }
        Circuit circuit = new Circuit(
                node.list("bodies", false).stream().map(CircuitFile::body).toList(),
                node.list("links", true).stream().map(CircuitFile::link).toList(),
                node.list("sources", true).stream().map(CircuitFile::source).toList(),
                node.list("mutualResistances", true).stream()
                        .map(CircuitFile::mutual)
                        .toList());
        if (problems.isEmpty()) {
            CircuitCheck.problems(circuit)
                    .forEach(p -> problems.add(new Problem(file, 0, p.where(), p.what(), "", p.advice() + ".")));
        }
        if (!problems.isEmpty()) {
            throw new BadInput(problems);
        }
        String name = path.getFileName() == null ? file : path.getFileName().toString();
        return new CircuitFile(node.textOr("name", name), node.textOr("title", ""), circuit);
    }

    private static JsonNode tree(Path path, String file) {
        try {
            return MAPPER.readTree(Files.readString(path));
        } catch (NoSuchFileException e) {
            throw BadInput.of(file, "there is no such file", "", "Check the name and the folder.");
        } catch (MalformedInputException e) {
            throw BadInput.of(file, "it is not UTF-8 text", "a JSON file", "");
        } catch (IOException e) {
            throw BadInput.of(file, "it cannot be read (" + e.getMessage() + ")", "a JSON file", "");
        } catch (JacksonException e) {
            int line = e.getLocation() == null ? 0 : e.getLocation().getLineNr();
            throw new BadInput(List.of(new Problem(
                    file,
                    Math.max(0, line),
                    "",
                    "it is not JSON: " + e.getOriginalMessage(),
                    "",
                    "Mend it there; a comma or bracket is often missing just before.")));
        }
    }

    private static Body body(CaseNode b) {
        return new Body(
                b.text("id"),
                b.textOr("material", "metal"),
                b.number("areaM2", "m2"),
                b.numberOr("bareFraction", "", 1),
                b.number("resistanceToRemoteEarthOhm", "ohm"),
                b.list("reactions", true).stream().map(CircuitFile::reaction).toList());
    }

    private static Reaction reaction(CaseNode r) {
        String kind = r.text("kind").toLowerCase(Locale.ROOT);
        if (!kind.isEmpty() && !kind.equals("anodic") && !kind.equals("cathodic")) {
            r.note("kind", "\"" + kind + "\"", "\"anodic\" or \"cathodic\"", "");
        }
        return new Reaction(
                kind.equals("cathodic") ? Reaction.Kind.CATHODIC : Reaction.Kind.ANODIC,
                r.number("e0V", "V"),
                r.number("i0APerM2", "A/m2"),
                r.number("slopeVPerDecade", "V per decade"),
                r.numberOr("limitAPerM2", "A/m2", Reaction.NO_LIMIT));
    }

    private static Link link(CaseNode l) {
        String id = l.text("id");
        String a = l.text("a");
        String b = l.text("b");
        String kind = l.text("kind");
        return switch (kind) {
            case "resistor" -> new Link.Resistor(id, a, b, l.number("ohm", "ohm"));
            case "isolator" ->
                new Link.Isolator(
                        id,
                        a,
                        b,
                        l.number("seriesOhm", "ohm"),
                        l.number("saturationA", "A"),
                        l.number("emissionFactor", ""),
                        l.whole("diodesInSeries"),
                        l.number("thermalVoltageV", "V"));
            case "open" -> new Link.OpenJoint(id, a, b);
            default -> {
                if (!kind.isEmpty()) {
                    l.note("kind", "\"" + kind + "\"", "\"resistor\", \"open\" or \"isolator\"", "");
                }
                yield new Link.OpenJoint(id, a, b);
            }
        };
    }

    private static CurrentSource source(CaseNode s) {
        return new CurrentSource(s.text("id"), s.text("from"), s.text("to"), s.number("currentA", "A"));
    }

    private static MutualResistance mutual(CaseNode m) {
        return new MutualResistance(m.text("a"), m.text("b"), m.number("ohm", "ohm"));
    }
}

package sternwright.protection.solver;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Stream;
import sternwright.protection.circuit.Body;
import sternwright.protection.circuit.Circuit;
import sternwright.protection.circuit.CurrentSource;
import sternwright.protection.circuit.Link;
import sternwright.protection.circuit.MutualResistance;
import sternwright.protection.circuit.Reaction;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A stored circuit with the answer of an independent program; see reference/protection/README.md among the test resources. */
public record ReferenceCase(String name, Circuit circuit, JsonNode expected) {
    private static final String FOLDER = "/reference/protection/circuits/";

    @Override
    public String toString() {
        return name;
    }

    /** Every stored case, by name. */
    public static List<ReferenceCase> all() {
        try {
            URI folder = Objects.requireNonNull(ReferenceCase.class.getResource(FOLDER))
                    .toURI();
            try (Stream<Path> files = Files.list(Path.of(folder))) {
                return files.sorted().map(ReferenceCase::read).toList();
            }
        } catch (IOException | URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    /** One case by the name of its file without the ending. */
    public static ReferenceCase named(String name) {
        return all().stream().filter(c -> c.name.equals(name)).findFirst().orElseThrow();
    }

    private static ReferenceCase read(Path file) {
        try {
            JsonNode root = JsonMapper.shared().readTree(Files.readString(file));
            return new ReferenceCase(root.get("name").asString(), circuit(root), root.get("expected"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Expected figures of one kind, by name. */
    public Map<String, Double> figures(String kind) {
        Map<String, Double> out = new TreeMap<>();
        expected.get(kind)
                .properties()
                .forEach(p -> out.put(p.getKey(), p.getValue().asDouble()));
        return out;
    }

    private static Circuit circuit(JsonNode root) {
        List<Body> bodies = new ArrayList<>();
        for (JsonNode b : root.get("bodies")) {
            List<Reaction> reactions = new ArrayList<>();
            for (JsonNode r : b.get("reactions")) {
                reactions.add(new Reaction(
                        Reaction.Kind.valueOf(r.get("kind").asString().toUpperCase(java.util.Locale.ROOT)),
                        r.get("e0V").asDouble(),
                        r.get("i0APerM2").asDouble(),
                        r.get("slopeVPerDecade").asDouble(),
                        r.get("limitAPerM2").isNull()
                                ? Reaction.NO_LIMIT
                                : r.get("limitAPerM2").asDouble()));
            }
            bodies.add(new Body(
                    b.get("id").asString(),
                    b.get("material").asString(),
                    b.get("areaM2").asDouble(),
                    b.get("bareFraction").asDouble(),
                    b.get("resistanceToRemoteEarthOhm").asDouble(),
                    reactions));
        }
        List<Link> links = new ArrayList<>();
        root.get("links").forEach(l -> links.add(link(l)));
        List<CurrentSource> sources = new ArrayList<>();
        root.get("sources")
                .forEach(s -> sources.add(new CurrentSource(
                        s.get("id").asString(),
                        s.get("from").asString(),
                        s.get("to").asString(),
                        s.get("currentA").asDouble())));
        List<MutualResistance> mutual = new ArrayList<>();
        if (root.has("mutualResistances")) {
            root.get("mutualResistances")
                    .forEach(m -> mutual.add(new MutualResistance(
                            m.get("a").asString(),
                            m.get("b").asString(),
                            m.get("ohm").asDouble())));
        }
        return new Circuit(bodies, links, sources, mutual);
    }

    private static Link link(JsonNode l) {
        String id = l.get("id").asString();
        String a = l.get("a").asString();
        String b = l.get("b").asString();
        return switch (l.get("kind").asString()) {
            case "resistor" -> new Link.Resistor(id, a, b, l.get("ohm").asDouble());
            case "open" -> new Link.OpenJoint(id, a, b);
            case "isolator" ->
                new Link.Isolator(
                        id,
                        a,
                        b,
                        l.get("seriesOhm").asDouble(),
                        l.get("saturationA").asDouble(),
                        l.get("emissionFactor").asDouble(),
                        l.get("diodesInSeries").asInt(),
                        l.get("thermalVoltageV").asDouble());
            default -> throw new IllegalArgumentException("link kind " + l.get("kind"));
        };
    }
}

package sternwright.app.truth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Currency;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.schema.CoreSchema;
import sternwright.app.command.CommandProgram;
import sternwright.app.desk.register.NewYard;
import sternwright.app.files.problem.Problem;
import sternwright.app.files.shape.Reading;
import sternwright.app.files.shape.Yaml;
import tools.jackson.databind.json.JsonMapper;

/** An independent validator judges files by the published schemas as the program judges them by its shapes. */
class SchemaAgreementTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final int SPOILT = 150;

    @TempDir
    static Path yard;

    @BeforeAll
    static void aYard() throws IOException {
        NewYard.make(yard, "Invented", Currency.getInstance("EUR"), 54);
        var quiet = new java.io.PrintWriter(java.io.Writer.nullWriter());
        int status = new CommandProgram(TODAY, quiet, quiet)
                .run("--yard", yard.toString(), "new", "boat", "--arrangement", "sterndrive", "--twin", "--id", "b");
        assertEquals(0, status);
    }

    @ParameterizedTest
    @EnumSource(Published.class)
    void bothTakeWhatIsRight(Published kind) throws IOException {
        String text = sample(kind);
        assertEquals(List.of(), read(kind, text));
        assertEquals(List.of(), validate(kind, text));
    }

    /** A line is spoilt at random; whatever the validator refuses the program refuses too. */
    @ParameterizedTest
    @EnumSource(Published.class)
    void theProgramRefusesWhatTheSchemaRefuses(Published kind) throws IOException {
        List<String> lines = sample(kind).lines().toList();
        Random random = new Random(kind.ordinal() + 1);
        int refused = 0;
        for (int i = 0; i < SPOILT; i++) {
            String text = spoil(lines, random);
            List<String> schema;
            try {
                schema = validate(kind, text);
            } catch (RuntimeException brokenYaml) {
                schema = List.of("broken");
            }
            if (!schema.isEmpty()) {
                refused++;
                assertFalse(read(kind, text).isEmpty(), () -> "the program took what the schema refuses:\n" + text);
            }
        }
        assertTrue(refused > SPOILT / 4, "the spoiling must hurt: " + refused);
    }

    /** Wrong fields, types, limits and words are refused by both, not by the program alone. */
    @ParameterizedTest
    @EnumSource(Published.class)
    void theSchemaRefusesUnknownFields(Published kind) throws IOException {
        String text = sample(kind) + "\nunknown-field: 1\n";
        assertFalse(validate(kind, text).isEmpty());
        assertFalse(read(kind, text).isEmpty());
    }

    private static String spoil(List<String> lines, Random random) {
        List<String> spoilt = new ArrayList<>(lines);
        int at = random.nextInt(lines.size());
        String line = lines.get(at);
        String value = Arrays.asList("-1", "\"text\"", "[1, 2]", "{a: 1}", "true", "0", "1.5", "")
                .get(random.nextInt(8));
        int colon = line.indexOf(": ");
        switch (random.nextInt(3)) {
            case 0 -> spoilt.set(at, colon < 0 ? line : line.substring(0, colon + 2) + value);
            case 1 -> spoilt.set(at, colon < 0 ? line : line.replaceFirst(": ", "x: "));
            default -> spoilt.remove(at);
        }
        return String.join("\n", spoilt) + "\n";
    }

    private static List<String> read(Published kind, String text) {
        List<Problem> problems = new ArrayList<>();
        Yaml.read(text, kind.shape, new Reading(kind.file, TODAY), problems);
        return problems.stream().map(Problem::text).toList();
    }

    private static List<String> validate(Published kind, String text) throws IOException {
        // Aliases are resolved first: a validator that reads YAML by itself takes them for text.
        Object tree =
                new Load(LoadSettings.builder().setSchema(new CoreSchema()).build()).loadFromString(text);
        return schema(kind)
                .validate(
                        JSON.writeValueAsString(tree),
                        InputFormat.JSON,
                        c -> c.executionConfig(e -> e.formatAssertionsEnabled(true)))
                .stream()
                .map(Object::toString)
                .toList();
    }

    private static Schema schema(Published kind) throws IOException {
        String resource = "/sternwright/schema/" + kind.id + ".schema.json";
        try (InputStream in =
                Objects.requireNonNull(SchemaAgreementTest.class.getResourceAsStream(resource), resource)) {
            return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                    .getSchema(new String(in.readAllBytes(), StandardCharsets.UTF_8), InputFormat.JSON);
        }
    }

    private static String sample(Published kind) throws IOException {
        return switch (kind) {
            case YARD -> Files.readString(yard.resolve("yard.yaml"));
            case BERTHS -> Files.readString(yard.resolve("berths.yaml"));
            case BOAT -> Files.readString(yard.resolve("boats/b.yaml"));
            case PROGRAMME -> resource("programmes/generic.yaml");
            case CATALOGUE -> resource("catalogue.yaml");
            case RESOURCES -> resource("season/resources.yaml");
        };
    }

    private static String resource(String name) throws IOException {
        try (InputStream in = SchemaAgreementTest.class.getResourceAsStream("/sternwright/" + name)) {
            return new String(Objects.requireNonNull(in, name).readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}

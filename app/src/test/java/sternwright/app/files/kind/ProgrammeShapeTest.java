package sternwright.app.files.kind;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import sternwright.app.files.problem.Problem;
import sternwright.app.files.shape.Reading;
import sternwright.app.files.shape.Yaml;
import sternwright.finding.Standing;
import sternwright.service.Half;
import sternwright.service.Place;
import sternwright.service.Programme;
import sternwright.service.Rule;

class ProgrammeShapeTest {
    private static final String SMALL = """
            id: own
            name: The yard's own rules
            rules:
              - id: oil
                work: change oil
                applies-to: {kinds: [engine], coolings: [fresh-water]}
                interval: {months: 12, hours: 200, after: ["tag:leg-work"]}
                half: lay-up
                minutes: 60
                supplies:
                  - {item: engine-oil, per-capacity: 1, if-unknown-l: 4}
                source: {title: invented, standing: from-memory}
            overridings:
              - {rule: oil, months: 6}
            """;

    private final List<Problem> problems = new ArrayList<>();

    @Test
    void whatIsLeftOutHasASensibleValue() {
        Rule rule = read(SMALL).rules().get(0);
        assertEquals(Half.LAY_UP, rule.half());
        assertEquals(Place.EITHER, rule.place());
        assertEquals(Standing.FROM_MEMORY, rule.source().standing());
        assertEquals(1, rule.materialShare());
        assertEquals(List.of("tag:leg-work"), rule.interval().after());
        assertEquals(Standing.YARD, read(SMALL).overridings().get(0).source().standing());
    }

    @Test
    void everythingWrongIsToldTogetherWithItsLine() {
        String bad = SMALL.replace("hours: 200", "hours: 0")
                .replace("half: lay-up", "half: layup")
                .replace("minutes: 60", "minuts: 60")
                .replace("months: 6}", "months: 6, months: 7}");
        assertNull(Yaml.read(bad, ProgrammeShape.PROGRAMME, reading(), problems));
        String told = String.join("\n", problems.stream().map(Problem::text).toList());
        assertTrue(told.contains("own.yaml:7: rules[oil].interval.hours: found 0; expected a number above 0"), told);
        assertTrue(told.contains("own.yaml:8: rules[oil].half: found \"layup\"; expected one of lay-up"), told);
        assertTrue(told.contains("Perhaps \"lay-up\" is meant"), told);
        assertTrue(told.contains("own.yaml:9: rules[oil].minuts: unknown field"), told);
        assertTrue(told.contains("Perhaps \"minutes\" is meant"), told);
        assertTrue(told.contains("rules[oil].minutes: missing"), told);
        assertTrue(told.contains("own.yaml:14: overridings[1].months: given twice"), told);
    }

    @Test
    void brokenYamlNamesTheLine() {
        assertNull(Yaml.read("id: a\nname: [b\nrules: []\n", ProgrammeShape.PROGRAMME, reading(), problems));
        assertEquals(1, problems.size());
        assertTrue(
                problems.get(0).text().startsWith("own.yaml:3: broken YAML"),
                problems.get(0).text());
    }

    private Programme read(String text) {
        var read = Yaml.read(text, ProgrammeShape.PROGRAMME, reading(), problems);
        assertNotNull(read, problems::toString);
        return Objects.requireNonNull(read).value();
    }

    private static Reading reading() {
        return new Reading("own.yaml", LocalDate.of(2026, 11, 25));
    }
}

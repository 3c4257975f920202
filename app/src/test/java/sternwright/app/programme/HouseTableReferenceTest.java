package sternwright.app.programme;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sternwright.app.files.Shipped;
import sternwright.app.programme.HouseTable.Line;
import sternwright.finding.Standing;
import sternwright.service.Half;
import sternwright.service.Interval;
import sternwright.service.Modifier;
import sternwright.service.Place;
import sternwright.service.Programme;
import sternwright.service.Rule;

/** The shipped programme says what the house table of service practice says, figure by figure. */
class HouseTableReferenceTest {
    /** Rules beside the table: renewing at half gone, and what the table's text on lay-up names without a figure. */
    private static final Set<String> BESIDE_THE_TABLE = Set.of(
            "renew-internal-anode",
            "renew-leg-anode",
            "renew-propeller-anode",
            "renew-shaft-anode",
            "renew-hull-anode",
            "renew-transom-anode",
            "renew-pod-anode",
            "renew-jet-anode",
            "treat-fuel-for-lay-up",
            "service-seacocks");

    private static final Programme GENERIC = Shipped.genericProgramme();
    private static final Map<String, Half> HALVES = Map.of("L", Half.LAY_UP, "R", Half.RECOMMISSION, "A", Half.ANY);

    static Stream<Line> lines() throws IOException {
        return HouseTable.lines().stream();
    }

    private static Rule rule(String id) {
        return GENERIC.rules().stream()
                .filter(r -> r.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new AssertionError("the programme has no rule " + id));
    }

    @ParameterizedTest
    @MethodSource("lines")
    void intervalIsTheTables(Line line) {
        Interval interval = rule(line.cell("rule")).interval();
        figure(line, "months", interval.months());
        figure(line, "hours", interval.hours());
        figure(line, "life", interval.lifeMonths());
        assertEquals(
                line.cell("occasion"),
                interval.occasion() == null ? "" : interval.occasion().name());
        assertEquals(
                line.cell("nth"),
                interval.everyNth() == null
                        ? ""
                        : interval.everyNth().n() + " " + interval.everyNth().ruleId());
        assertEquals(line.cell("after"), String.join(";", interval.after()));
    }

    @ParameterizedTest
    @MethodSource("lines")
    void halfPlaceMinutesAndStandingAreTheTables(Line line) {
        Rule rule = rule(line.cell("rule"));
        assertEquals(HALVES.get(line.cell("half")), rule.half());
        Place place = rule.id().equals("change-pod-oil-ashore") ? Place.ASHORE : place(line.cell("place"));
        assertEquals(place, rule.place());
        assertEquals(line.cell("place").contains("diver"), rule.diver());
        if (!line.cell("minutes").isEmpty()) {
            assertEquals(Double.parseDouble(line.cell("minutes")), rule.minutes());
            assertTrue(line.cell("min").contains(line.cell("minutes")), "the row itself says so");
        }
        assertEquals(
                line.cell("standing").startsWith("C") ? Standing.COMMON_PRACTICE : Standing.FROM_MEMORY,
                rule.source().standing());
    }

    @ParameterizedTest
    @MethodSource("lines")
    void circumstancesAreTheTables(Line line) {
        Rule rule = rule(line.cell("rule"));
        modified(line, "hot", rule, "hot-marina");
        modified(line, "heavy", rule, "heavy-use");
        Modifier contaminated = modifier(rule, "condition:contaminated");
        assertEquals(line.cell("contaminated"), contaminated == null ? "" : "" + contaminated.factor());
        if (contaminated != null) {
            assertEquals(Standing.FROM_MEMORY, contaminated.source().standing(), "the table says: halving from memory");
        }
    }

    @Test
    void nothingOfTheTableIsMissingAndNothingIsAddedUnsaid() throws IOException {
        List<Line> lines = HouseTable.lines();
        assertEquals(42, lines.stream().map(l -> l.cell("work")).distinct().count(), "rows of the table");
        Set<String> expected = lines.stream().map(l -> l.cell("rule")).collect(Collectors.toCollection(HashSet::new));
        expected.addAll(BESIDE_THE_TABLE);
        assertEquals(expected, GENERIC.rules().stream().map(Rule::id).collect(Collectors.toSet()));
    }

    @Test
    void rulesLeadToOtherRules() {
        assertEquals("renew-diaphragm-seal", rule("renew-mounts").interval().unlessLastsTo());
        assertTrue(rule("inspect-mounts").interval().after().contains("renew-diaphragm-seal"));
        assertTrue(rule("align-coupling").interval().after().containsAll(List.of("renew-mounts", "event:grounding")));
        assertTrue(rule("renew-diaphragm-seal").tags().contains("leg-work"));
        assertTrue(rule("renew-mounts").tags().contains("engine-work"));
    }

    @Test
    void conditionLeads() {
        for (Rule renewal : GENERIC.rules().stream()
                .filter(r -> r.id().matches("renew-.*-anode"))
                .toList()) {
            assertTrue(
                    renewal.triggers().stream()
                            .anyMatch(t -> t.reading().equals("anode-remaining") && t.pulledBy(50) && !t.pulledBy(51)),
                    renewal.id() + " at half gone, whatever the date");
            assertEquals(Interval.of(null, null), renewal.interval(), renewal.id());
        }
        for (String oil : List.of("change-engine-oil", "change-saildrive-oil", "change-sterndrive-oil")) {
            assertTrue(
                    rule(oil).triggers().stream().anyMatch(t -> t.reading().equals("water-in-oil") && t.pulledBy(1)),
                    oil + " that shows water is changed now");
        }
        assertTrue(
                rule("clean-heat-exchanger").triggers().stream()
                        .anyMatch(t -> t.reading().equals("heat-transfer-loss")),
                "on fouling trend");
    }

    private static void figure(Line line, String column, @Nullable Number value) {
        String cell = line.cell(column);
        if (cell.isEmpty()) {
            assertEquals(null, value, column);
            return;
        }
        assertNotNull(value, column);
        String[] range = cell.split("-");
        double low = Double.parseDouble(range[0]);
        double high = Double.parseDouble(range[range.length - 1]);
        assertTrue(low <= value.doubleValue() && value.doubleValue() <= high, column + " " + value + " in " + cell);
        for (String end : range) {
            assertTrue(line.cell("interval").contains(end), "the row itself says " + end);
        }
    }

    private static Place place(String cell) {
        if (cell.startsWith("either")) {
            return Place.EITHER;
        }
        return cell.startsWith("ashore") ? Place.ASHORE : Place.AFLOAT;
    }

    private static void modified(Line line, String column, Rule rule, String when) {
        Modifier modifier = modifier(rule, when);
        String cell = line.cell(column);
        if (cell.isEmpty()) {
            assertEquals(null, modifier, when);
            return;
        }
        assertNotNull(modifier, when);
        Integer own = rule.interval().months();
        double months = modifier.months() != null ? modifier.months() : (own == null ? 0 : own * modifier.factor());
        assertEquals(Double.parseDouble(cell), months, 1e-9);
    }

    private static @Nullable Modifier modifier(Rule rule, String when) {
        return rule.modifiers().stream()
                .filter(m -> m.when().equals(when))
                .findFirst()
                .orElse(null);
    }
}

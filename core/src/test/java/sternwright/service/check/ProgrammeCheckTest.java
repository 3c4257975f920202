package sternwright.service.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static sternwright.service.Rules.months;
import static sternwright.service.Rules.programme;
import static sternwright.service.Rules.rule;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import sternwright.boat.Arrangement;
import sternwright.boat.Boat;
import sternwright.boat.Cooling;
import sternwright.boat.Part;
import sternwright.service.AppliesTo;
import sternwright.service.EveryNth;
import sternwright.service.Interval;
import sternwright.service.IntervalClause;
import sternwright.service.Overriding;
import sternwright.service.Programme;
import sternwright.service.Rule;
import sternwright.service.Rules;
import sternwright.service.Scope;

class ProgrammeCheckTest {
    private static final Boat TERN =
            Rules.boat("tern", null, Arrangement.SHAFT, Cooling.RAW_WATER, null, Part.of("engine", "engine"));

    private static List<String> lines(List<Rule> rules, Overriding... overridings) {
        return faults(rules, overridings).stream().map(ProgrammeFault::line).toList();
    }

    private static List<ProgrammeFault> faults(List<Rule> rules, Overriding... overridings) {
        Programme p = programme("generic", rules, List.of(overridings));
        return ProgrammeCheck.faults(List.of(p), Rules.catalogue(), List.of(TERN));
    }

    private static Interval after(String... ids) {
        return new Interval(null, null, null, null, null, List.of(ids), null);
    }

    private static Interval nth(String id, int n) {
        return new Interval(null, null, null, new EveryNth(id, n), null, List.of(), null);
    }

    @Test
    void soundRulesHaveNoFaults() {
        Rule oil = rule("change-oil", "engine", Interval.of(12, 200.0));
        Rule drain = rule("drain-oil", "engine", nth("change-oil", 3));
        Rule align = rule("align", "leg", after("drain-oil", "event:grounding"));
        assertEquals(List.of(), lines(List.of(oil, drain, align), months("align", Scope.PART, "tern/main/engine", 6)));
    }

    @Test
    void anUnknownRuleIsNamedWithTheNearest() {
        Rule oil = rule("change-oil", "engine", Interval.of(12, 200.0));
        Rule drain = rule("drain-oil", "engine", nth("chang-oil", 3));
        assertEquals(
                List.of("programme generic, rule drain-oil, interval.every-nth.rule: \"chang-oil\": there is no rule of"
                        + " this name; did you mean \"change-oil\"?"),
                lines(List.of(oil, drain)));
    }

    @Test
    void everyKindOfReferenceIsFollowed() {
        Rule odd = rule(
                "odd",
                new AppliesTo(Set.of("engin"), Set.of("drve"), Set.of(), Set.of(), Set.of()),
                new Interval(null, null, null, null, null, List.of("od", "tag:leg-work"), "odd-one"),
                Set.of(),
                List.of("hot-coolant"));
        assertEquals(
                List.of(
                        "rule odd, applies-to.kinds",
                        "rule odd, applies-to.tags",
                        "rule odd, interval.unless-lasts-to",
                        "rule odd, interval.after",
                        "rule odd, interval.after",
                        "rule odd, cautions"),
                faults(List.of(odd)).stream().map(f -> f.spot().words()).toList());
    }

    @Test
    void overridingsMustReachSomethingThatIsThere() {
        Rule oil = rule("change-oil", "engine", Interval.of(12, 200.0));
        List<ProgrammeFault> faults = faults(
                List.of(oil),
                months("change-oli", Scope.YARD, "", 6),
                months("change-oil", Scope.BOAT, "turn", 6),
                months("change-oil", Scope.PART, "tern/main/engin", 6),
                months("change-oil", Scope.PART, "tern", 6),
                months("change-oil", Scope.YARD, "tern", 6),
                months("change-oil", Scope.ENGINE_MODEL, "X-30", 0));
        assertEquals(6, faults.size(), faults.toString());
        assertEquals("change-oil", faults.get(0).nearest());
        assertEquals("tern", faults.get(1).nearest());
        assertEquals("tern/main/engine", faults.get(2).nearest());
        assertTrue(
                faults.get(5).line().contains("must be at least 1"),
                faults.get(5).line());
    }

    @Test
    void figuresThatCannotBeAreNamed() {
        Rule zero = rule("zero", "engine", Interval.of(0, -5.0));
        Rule none = rule("none", "engine", Interval.of(null, null));
        Rule once = rule("once", "engine", nth("zero", 1));
        assertEquals(
                List.of(
                        "rule zero, interval.months",
                        "rule zero, interval.hours",
                        "rule none, interval",
                        "rule once, interval.every-nth.n"),
                faults(List.of(zero, none, once)).stream()
                        .map(f -> f.spot().words())
                        .toList());
    }

    @Test
    void ringsOfRulesAreFound() {
        Rule a = rule("a", "engine", after("b"));
        Rule b = rule("b", "engine", nth("c", 2));
        Rule c = rule("c", "engine", after("a"));
        Rule self = rule(
                "self",
                new AppliesTo(Set.of("engine"), Set.of(), Set.of(), Set.of(), Set.of()),
                after("tag:loud"),
                Set.of("loud"),
                List.of());
        assertEquals(
                List.of("a > b > c > a", "self > self"),
                faults(List.of(a, b, c, self)).stream()
                        .map(ProgrammeFault::written)
                        .toList());
    }

    @Test
    void twoRulesOfOneIdInOneProgramme() {
        Rule oil = rule("change-oil", "engine", Interval.of(12, 200.0));
        assertTrue(lines(List.of(oil, oil)).get(0).contains("two rules have this id"));
    }

    private static Overriding drop(@org.jspecify.annotations.Nullable Double hours, IntervalClause... clauses) {
        return new Overriding(
                "change-oil",
                Scope.YARD,
                "",
                null,
                hours,
                null,
                null,
                Set.of(clauses),
                null,
                null,
                null,
                true,
                Rules.source("drop"));
    }

    @Test
    void aDroppedClauseMustBeThereAndLeaveOne() {
        Rule oil = rule("change-oil", "engine", Interval.of(12, 200.0));
        assertEquals(List.of(), lines(List.of(oil), drop(null, IntervalClause.HOURS)));
        assertEquals(
                List.of(
                        "programme generic, overriding 1 (rule change-oil), drop: \"life-months\": the rule has no life-months to"
                                + " drop: it has months, hours"),
                lines(List.of(oil), drop(null, IntervalClause.LIFE_MONTHS)));
        assertEquals(
                List.of(
                        "programme generic, overriding 1 (rule change-oil), drop: \"months, hours\": nothing is left that makes"
                                + " the work due: write applies: false to switch the rule off"),
                lines(List.of(oil), drop(null, IntervalClause.MONTHS, IntervalClause.HOURS)));
        assertEquals(
                List.of(
                        "programme generic, overriding 1 (rule change-oil), drop: \"hours\": it is given and dropped at once:"
                                + " leave out hours: 100.0 or the drop"),
                lines(List.of(oil), drop(100.0, IntervalClause.HOURS)));
    }
}

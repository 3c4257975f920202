package sternwright.service;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static sternwright.service.Rules.applies;
import static sternwright.service.Rules.minutes;
import static sternwright.service.Rules.months;
import static sternwright.service.Rules.programme;
import static sternwright.service.Rules.rule;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import sternwright.boat.Arrangement;
import sternwright.boat.Boat;
import sternwright.boat.Cooling;
import sternwright.boat.Part;

class RuleBookTest {
    private static final Rule OIL = rule("change-oil", "engine", Interval.of(12, 200.0));
    private static final Boat TERN = boat("tern", null, "X-30");

    private static Boat boat(String id, @Nullable String programme, @Nullable String model) {
        return Rules.boat(
                id,
                programme,
                Arrangement.SAILDRIVE,
                Cooling.FRESH_WATER,
                model,
                Part.of("engine", "engine"),
                Part.of("pump", "raw-water-pump"));
    }

    private static RuleBook book(List<Rule> rules, Programme... yard) {
        return RuleBook.of(programme("generic", rules, List.of()), List.of(yard), Rules.catalogue());
    }

    private static List<RuleInForce> on(RuleBook book, Boat boat, String part) {
        var main = boat.installations().get(0);
        return book.forPart(boat, main, main.part(part).orElseThrow());
    }

    @Test
    void aRuleIsForItsKindArrangementAndCooling() {
        Rule bySailDrive = rule(
                "a",
                new AppliesTo(Set.of("engine"), Set.of(), Set.of(Arrangement.SAILDRIVE), Set.of(), Set.of()),
                Interval.of(12, null),
                Set.of(),
                List.of());
        Rule byShaft = rule(
                "b",
                new AppliesTo(Set.of("engine"), Set.of(), Set.of(Arrangement.SHAFT), Set.of(), Set.of()),
                Interval.of(12, null),
                Set.of(),
                List.of());
        Rule byKeel = rule(
                "c",
                new AppliesTo(Set.of("engine"), Set.of(), Set.of(), Set.of(Cooling.KEEL), Set.of()),
                Interval.of(12, null),
                Set.of(),
                List.of());
        Rule byTag = rule(
                "d",
                new AppliesTo(Set.of(), Set.of("raw-water-side"), Set.of(), Set.of(), Set.of()),
                Interval.of(12, null),
                Set.of(),
                List.of());
        RuleBook book = book(List.of(bySailDrive, byShaft, byKeel, byTag));
        assertEquals(List.of("a"), ids(on(book, TERN, "engine")));
        assertEquals(List.of("d"), ids(on(book, TERN, "pump")));
    }

    @Test
    void aConditionMustBeCarriedByThePart() {
        Rule rule = rule(
                "a",
                new AppliesTo(Set.of("engine"), Set.of(), Set.of(), Set.of(), Set.of("marinised-block")),
                Interval.of(12, null),
                Set.of(),
                List.of());
        Boat with = Rules.boat(
                "with",
                null,
                Arrangement.SHAFT,
                Cooling.RAW_WATER,
                null,
                Rules.with("engine", "engine", "marinised-block"));
        assertEquals(List.of("a"), ids(on(book(List.of(rule)), with, "engine")));
        assertEquals(List.of(), ids(on(book(List.of(rule)), TERN, "engine")));
    }

    @Test
    void theNarrowestLeadsFieldByField() {
        RuleBook book = book(
                List.of(OIL),
                programme(
                        "yard",
                        List.of(),
                        List.of(
                                months("change-oil", Scope.PART, "tern/main/engine", 5),
                                months("change-oil", Scope.BOAT, "tern", 6),
                                months("change-oil", Scope.ENGINE_MODEL, "x-30", 9),
                                months("change-oil", Scope.YARD, "", 11),
                                minutes("change-oil", Scope.ENGINE_MODEL, "X-30", 50))));
        RuleInForce tern = on(book, TERN, "engine").get(0);
        assertEquals(5, tern.rule().interval().months());
        assertEquals(200.0, tern.rule().interval().hours());
        assertEquals(50, tern.rule().minutes());
        assertEquals(Scope.PART, tern.scope());
        assertEquals("PART months", tern.source().title());

        RuleInForce sister = on(book, boat("sister", null, "X-30"), "engine").get(0);
        assertEquals(9, sister.rule().interval().months());
        assertEquals(Scope.ENGINE_MODEL, sister.scope());

        RuleInForce other = on(book, boat("other", null, null), "engine").get(0);
        assertEquals(11, other.rule().interval().months());
        assertEquals(Scope.YARD, other.scope());
    }

    @Test
    void switchedOffByTheYardAndOnAgainForOneBoat() {
        RuleBook book = book(
                List.of(OIL),
                programme(
                        "yard",
                        List.of(),
                        List.of(
                                applies("change-oil", Scope.YARD, "", false),
                                applies("change-oil", Scope.BOAT, "tern", true))));
        assertEquals(1, on(book, TERN, "engine").size());
        assertEquals(0, on(book, boat("other", null, null), "engine").size());
        assertEquals(
                "service practice",
                on(book, TERN, "engine").get(0).source().title(),
                "no figure was changed, so the figures' source stays");
    }

    @Test
    void theYardAddsAndReplacesRules() {
        Rule own = rule("change-oil", "engine", Interval.of(8, null));
        Rule more = rule("polish", "engine", Interval.of(24, null));
        RuleBook book = book(List.of(OIL), programme("yard", List.of(own, more), List.of()));
        List<RuleInForce> rules = on(book, TERN, "engine");
        assertEquals(List.of("change-oil", "polish"), ids(rules));
        assertEquals(8, rules.get(0).rule().interval().months());
        assertEquals(Scope.YARD, rules.get(0).scope());
        assertSame(own, book.rule("change-oil").orElseThrow());
    }

    @Test
    void aNamedProgrammeIsForTheBoatsThatNameIt() {
        Programme charter = new Programme(
                "charter",
                "charter boats",
                true,
                List.of(),
                List.of(months("change-oil", Scope.YARD, "", 6)),
                List.of());
        RuleBook book = book(List.of(OIL), charter);
        Boat hired = boat("hired", "charter", null);
        assertEquals(6, on(book, hired, "engine").get(0).rule().interval().months());
        assertEquals(12, on(book, TERN, "engine").get(0).rule().interval().months());
        assertEquals(charter, book.programmeOf(hired));
        assertEquals("generic", book.programmeOf(TERN).id());
    }

    @Test
    void partsThatDifferOnlyInTheirBoatShareTheAnswer() {
        RuleBook book = book(List.of(OIL));
        assertSame(on(book, TERN, "engine"), on(book, boat("other", null, null), "engine"));
        assertEquals("engine", on(book, TERN, "engine").get(0).rule().servicePoint());
    }

    @Test
    void aPartOfUnknownKindHasNoRules() {
        Boat odd = Rules.boat("odd", null, Arrangement.JET, Cooling.KEEL, null, Part.of("thing", "thing"));
        assertTrue(on(book(List.of(OIL)), odd, "thing").isEmpty());
    }

    private static Overriding dropping(Scope scope, String target, IntervalClause clause) {
        return new Overriding(
                "change-oil",
                scope,
                target,
                null,
                null,
                null,
                null,
                Set.of(clause),
                null,
                null,
                null,
                true,
                Rules.source(scope + " drop"));
    }

    @Test
    void aClauseIsDroppedAndANarrowerOverridingMayGiveItAgain() {
        RuleBook book = book(
                List.of(OIL),
                programme(
                        "yard",
                        List.of(),
                        List.of(
                                dropping(Scope.YARD, "", IntervalClause.HOURS),
                                dropping(Scope.BOAT, "tern", IntervalClause.MONTHS),
                                months("change-oil", Scope.PART, "tern/main/engine", 5))));
        Interval tern = on(book, TERN, "engine").get(0).rule().interval();
        assertNull(tern.hours(), "dropped for the whole yard");
        assertEquals(5, tern.months(), "given again for the part");
        Interval other =
                on(book, boat("other", null, null), "engine").get(0).rule().interval();
        assertNull(other.hours());
        assertEquals(12, other.months());
    }

    @Test
    void theChainSaysWhatWasOverriddenByWhom() {
        RuleBook book = book(
                List.of(OIL),
                programme(
                        "yard",
                        List.of(),
                        List.of(
                                dropping(Scope.YARD, "", IntervalClause.HOURS),
                                applies("change-oil", Scope.BOAT, "tern", true),
                                months("change-oil", Scope.PART, "tern/main/engine", 1))));
        RuleInForce held = on(book, TERN, "engine").get(0);
        assertEquals(
                List.of("12 months, 200 h", "no hours", "1 month"),
                held.chain().stream().map(FigureStep::figures).toList(),
                "what changes no figure is no link");
        assertEquals(
                List.of(Scope.GENERIC, Scope.YARD, Scope.PART),
                held.chain().stream().map(FigureStep::scope).toList());
        assertTrue(held.sourceLine().startsWith("generic programme: 12 months, 200 h; service practice"));
        RuleInForce plain = on(book(List.of(OIL)), TERN, "engine").get(0);
        assertEquals(1, plain.chain().size());
        assertEquals(plain.source().line(), plain.sources());
    }

    private static List<String> ids(List<RuleInForce> rules) {
        return rules.stream().map(r -> r.rule().id()).toList();
    }
}

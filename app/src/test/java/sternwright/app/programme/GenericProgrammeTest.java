package sternwright.app.programme;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sternwright.app.files.Shipped;
import sternwright.boat.PartCatalogue;
import sternwright.boat.PartKind;
import sternwright.finding.Caution;
import sternwright.finding.Source;
import sternwright.finding.Standing;
import sternwright.protection.metal.MetalCatalogue;
import sternwright.service.Modifier;
import sternwright.service.Programme;
import sternwright.service.ReadingAsked;
import sternwright.service.Rule;
import sternwright.service.SupplyNeed;
import sternwright.service.Trigger;
import sternwright.service.check.ProgrammeCheck;
import sternwright.service.check.ProgrammeFault;
import sternwright.yard.StoreItem;

/** The shipped programme, catalogue and stores hang together and leave nothing unsaid. */
class GenericProgrammeTest {
    private static final Programme GENERIC = Shipped.genericProgramme();
    private static final PartCatalogue CATALOGUE = Shipped.catalogue();

    static Stream<Rule> rules() {
        return GENERIC.rules().stream();
    }

    @Test
    void everyReferenceLeadsSomewhere() {
        assertEquals(
                List.of(),
                ProgrammeCheck.faults(List.of(GENERIC), CATALOGUE, List.of()).stream()
                        .map(ProgrammeFault::line)
                        .toList());
    }

    @Test
    void everyUsualMetalIsInTheCatalogueOfMetals() {
        for (PartKind kind : CATALOGUE.kinds()) {
            String metal = kind.usualMetal();
            assertTrue(metal == null || MetalCatalogue.standard().knows(metal), kind.id() + ": " + metal);
        }
    }

    @ParameterizedTest
    @MethodSource("rules")
    void everyRuleIsForAKindOfPart(Rule rule) {
        assertTrue(
                CATALOGUE.kinds().stream()
                        .anyMatch(k -> rule.appliesTo().kinds().contains(k.id())
                                || k.tags().stream().anyMatch(rule.appliesTo().tags()::contains)),
                rule.id());
    }

    @ParameterizedTest
    @MethodSource("rules")
    void everyRuleSpeaksToOwnerAndEngineer(Rule rule) {
        assertFalse(rule.why().isBlank());
        assertFalse(rule.ifDeclined().isBlank());
        assertTrue(rule.steps().size() >= 2, "steps in working order");
        assertTrue(rule.cautions().contains("who-decides"), "the maker's manual leads");
        assertFalse(rule.skills().isEmpty());
        assertTrue(rule.riskPerMonthLate() > 0);
    }

    @ParameterizedTest
    @MethodSource("rules")
    void whatStandsInsideASentenceIsAPhrase(Rule rule) {
        Stream.concat(
                        rule.modifiers().stream().map(Modifier::why),
                        rule.triggers().stream().map(Trigger::why))
                .forEach(why -> assertTrue(why.matches("[a-z].*[^.]"), why));
    }

    @ParameterizedTest
    @MethodSource("rules")
    void everyFigureHasASource(Rule rule) {
        assertSound(rule.source());
        rule.readings().stream().map(ReadingAsked::source).forEach(GenericProgrammeTest::assertSound);
        rule.modifiers().forEach(m -> assertSound(m.source()));
    }

    private static void assertSound(Source source) {
        assertFalse(source.title().isBlank());
        if (source.standing() == Standing.PUBLISHED) {
            assertFalse(source.place().isBlank(), "published says where: " + source.title());
        }
        assertTrue(
                source.standing() != Standing.MAKER && source.standing() != Standing.YARD,
                "the generic programme knows neither maker nor yard");
    }

    @ParameterizedTest
    @MethodSource("rules")
    void ashoreWorkShowsTheLiftingCaution(Rule rule) {
        if (rule.place() == sternwright.service.Place.ASHORE && !rule.id().equals("service-seacocks")) {
            assertTrue(rule.cautions().contains("lifting"), rule.id());
        }
        if (rule.diver()) {
            assertTrue(rule.cautions().contains("shore-power"), "nobody dives beside energised boats");
        }
    }

    @Test
    void theStoresHoldWhatTheRulesTake() {
        Set<String> taken = rules().flatMap(r -> r.supplies().stream())
                .map(SupplyNeed::item)
                .collect(Collectors.toSet());
        List<StoreItem> stores = Shipped.stores();
        assertEquals(taken, stores.stream().map(StoreItem::id).collect(Collectors.toSet()));
        stores.forEach(
                s -> assertTrue(s.price() > 0 && Set.of("L", "kg", "m", "pcs").contains(s.unit()), s.id()));
    }

    @Test
    void everythingTakenPerLitreSitsInAPartWithACapacity() {
        for (Rule rule : GENERIC.rules()) {
            for (SupplyNeed need : rule.supplies()) {
                if (need.perCapacity() > 0) {
                    assertTrue(
                            need.ifUnknownL() > 0, rule.id() + " says what to allow where the capacity is not known");
                    assertTrue(kindsOf(rule).allMatch(k -> k.capacityOf() != null), rule.id());
                }
            }
        }
    }

    private static Stream<PartKind> kindsOf(Rule rule) {
        return CATALOGUE.kinds().stream()
                .filter(k -> rule.appliesTo().kinds().contains(k.id())
                        || k.tags().stream().anyMatch(rule.appliesTo().tags()::contains));
    }

    @Test
    void everyCautionIsShownSomewhere() {
        Set<String> shown = rules().flatMap(r -> r.cautions().stream()).collect(Collectors.toCollection(HashSet::new));
        assertEquals(GENERIC.cautions().stream().map(Caution::id).collect(Collectors.toSet()), shown);
    }

    @Test
    void whatKeepsTheSeaOutIsASafetyItem() {
        for (String id : List.of(
                "renew-diaphragm-seal",
                "renew-bellows",
                "renew-pod-seals",
                "renew-shaft-seal",
                "freeze-protect-raw-water",
                "inspect-rams",
                "inspect-mixing-elbow",
                "renew-hoses")) {
            Rule rule = rules().filter(r -> r.id().equals(id)).findFirst().orElseThrow();
            assertTrue(rule.safety(), id);
        }
    }
}

package sternwright.app.programme;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import sternwright.app.files.Shipped;
import sternwright.app.files.kind.ProgrammeShape;
import sternwright.app.files.problem.Problem;
import sternwright.app.files.shape.Reading;
import sternwright.app.files.shape.Yaml;
import sternwright.boat.Arrangement;
import sternwright.boat.Boat;
import sternwright.boat.Cooling;
import sternwright.boat.Part;
import sternwright.finding.Standing;
import sternwright.service.Half;
import sternwright.service.Place;
import sternwright.service.Programme;
import sternwright.service.RuleBook;
import sternwright.service.RuleInForce;
import sternwright.service.Rules;
import sternwright.service.Scope;
import sternwright.service.check.ProgrammeCheck;
import sternwright.service.check.ProgrammeFault;

/** Overriding end to end: from the text a yard writes to the rule that holds for a part. */
class OverridingTest {
    private static final String YARD = """
            id: own
            name: Our own figures
            overridings:
              - {rule: change-engine-oil, hours: 150, minutes: 75}
              - rule: change-engine-oil
                scope: engine-model
                target: K-40
                hours: 250
                source: {title: "Manual K-40", place: "section 7", standing: maker}
              - {rule: change-engine-oil, scope: boat, target: tern, months: 6}
              - {rule: renew-diaphragm-seal, scope: part, target: tern/main/seal, life-months: 60}
              - {rule: drain-saildrive-oil, nth: 2}
              - {rule: prove-leg-isolated, half: lay-up, place: ashore}
              - {rule: change-fine-fuel-filter, drop: [hours]}
              - {rule: service-air-filter, applies: false}
              - {rule: service-air-filter, scope: boat, target: tern, applies: true}
            rules:
              - id: polish-hull
                work: polish the hull above the water
                applies-to: {kinds: [leg]}
                interval: {months: 24}
                half: recommission
                place: ashore
                minutes: 600
                source: {title: yard's own rule, standing: yard}
            """;

    private final Boat tern = boat("tern", "k-40");
    private final Boat sister = boat("sister", "K-40");
    private final Boat stranger = boat("stranger", null);
    private final RuleBook book = RuleBook.of(Shipped.genericProgramme(), List.of(read(YARD)), Shipped.catalogue());

    private static Boat boat(String id, @Nullable String model) {
        return Rules.boat(
                id,
                null,
                Arrangement.SAILDRIVE,
                Cooling.FRESH_WATER,
                model,
                Part.of("engine", "engine"),
                Part.of("air", "air-filter"),
                Part.of("fine", "fine-fuel-filter"),
                Part.of("leg", "leg"),
                Part.of("seal", "diaphragm-seal"));
    }

    private static Programme read(String text) {
        List<Problem> problems = new ArrayList<>();
        var read = Yaml.read(text, ProgrammeShape.PROGRAMME, new Reading("own.yaml", LocalDate.MAX), problems);
        assertNotNull(read, problems.toString());
        return read.value();
    }

    private Optional<RuleInForce> inForce(Boat boat, String part, String rule) {
        var main = boat.installations().get(0);
        return book.forPart(boat, main, main.part(part).orElseThrow()).stream()
                .filter(r -> r.rule().id().equals(rule))
                .findFirst();
    }

    @Test
    void theYardsProgrammeIsSound() {
        assertEquals(
                List.of(),
                ProgrammeCheck.faults(
                                List.of(Shipped.genericProgramme(), read(YARD)), Shipped.catalogue(), List.of(tern))
                        .stream()
                        .map(ProgrammeFault::line)
                        .toList());
    }

    @Test
    void yard() {
        RuleInForce oil = inForce(stranger, "engine", "change-engine-oil").orElseThrow();
        assertEquals(12, oil.rule().interval().months());
        assertEquals(150.0, oil.rule().interval().hours());
        assertEquals(75, oil.rule().minutes());
        assertEquals(Scope.YARD, oil.scope());
        assertEquals("yard's own rule (yard's own rule)", oil.source().line());
    }

    @Test
    void engineModel() {
        RuleInForce oil = inForce(sister, "engine", "change-engine-oil").orElseThrow();
        assertEquals(250.0, oil.rule().interval().hours());
        assertEquals(75, oil.rule().minutes(), "the maker says nothing of minutes, so the yard's stay");
        assertEquals(Scope.ENGINE_MODEL, oil.scope());
        assertEquals(Standing.MAKER, oil.source().standing());
        assertEquals("Manual K-40, section 7 (maker's figure)", oil.source().line());
    }

    @Test
    void boat() {
        RuleInForce oil = inForce(tern, "engine", "change-engine-oil").orElseThrow();
        assertEquals(6, oil.rule().interval().months());
        assertEquals(250.0, oil.rule().interval().hours());
        assertEquals(Scope.BOAT, oil.scope());
    }

    @Test
    void part() {
        RuleInForce seal = inForce(tern, "seal", "renew-diaphragm-seal").orElseThrow();
        assertEquals(60, seal.rule().interval().lifeMonths());
        assertEquals(Scope.PART, seal.scope());
        assertTrue(seal.rule().safety(), "what is not overridden stays");
        RuleInForce other = inForce(sister, "seal", "renew-diaphragm-seal").orElseThrow();
        assertEquals(84, other.rule().interval().lifeMonths());
        assertEquals(Scope.GENERIC, other.scope());
    }

    @Test
    void nthHalfAndPlace() {
        RuleInForce drain = inForce(stranger, "leg", "drain-saildrive-oil").orElseThrow();
        assertEquals(
                2,
                drain.rule().interval().everyNth() == null
                        ? 0
                        : drain.rule().interval().everyNth().n());
        RuleInForce proof = inForce(stranger, "leg", "prove-leg-isolated").orElseThrow();
        assertEquals(Half.LAY_UP, proof.rule().half());
        assertEquals(Place.ASHORE, proof.rule().place());
    }

    @Test
    void aDroppedClause() {
        RuleInForce fuel = inForce(stranger, "fine", "change-fine-fuel-filter").orElseThrow();
        assertEquals(12, fuel.rule().interval().months());
        assertNull(fuel.rule().interval().hours());
        assertEquals(
                "generic programme: 12 months, 400 h; service practice (common practice, no source); then yard's own rule: no"
                        + " hours; yard's own rule (yard's own rule)",
                fuel.sourceLine());
    }

    @Test
    void aClauseThatIsNoneIsNamedWithTheNearest() {
        List<Problem> problems = new ArrayList<>();
        Yaml.read(
                "id: own\nname: own\noverridings:\n  - {rule: change-engine-oil, drop: [hour]}\n",
                ProgrammeShape.PROGRAMME,
                new Reading("own.yaml", LocalDate.MAX),
                problems);
        assertEquals(1, problems.size());
        assertTrue(problems.get(0).toString().contains("one of months, hours, life-months"), problems.toString());
    }

    @Test
    void switchedOffAndOnAgain() {
        assertTrue(inForce(stranger, "air", "service-air-filter").isEmpty());
        assertTrue(inForce(tern, "air", "service-air-filter").isPresent());
    }

    @Test
    void theYardsOwnRule() {
        RuleInForce polish = inForce(stranger, "leg", "polish-hull").orElseThrow();
        assertEquals(Scope.YARD, polish.scope());
        assertEquals("leg", polish.rule().servicePoint(), "taken from the kind of part");
    }

    @Test
    void theExampleOfTheManualHolds() throws IOException {
        String page = Files.readString(Path.of("..", "docs", "programmes.md"));
        int from = page.indexOf("# programmes/own.yaml");
        Programme example = read(page.substring(from, page.indexOf("```", from)));
        List<Programme> all = List.of(Shipped.genericProgramme(), example);
        assertEquals(List.of(), ProgrammeCheck.faults(all, Shipped.catalogue(), List.of(tern)));
        RuleBook manual = RuleBook.of(all.get(0), List.of(example), Shipped.catalogue());
        assertEquals("6 months, 250.0 h", oil(manual, tern));
        assertEquals("12 months, 250.0 h", oil(manual, sister));
        assertEquals("12 months, 150.0 h", oil(manual, stranger));
    }

    private static String oil(RuleBook book, Boat boat) {
        var main = boat.installations().get(0);
        return book.forPart(boat, main, main.part("engine").orElseThrow()).stream()
                .filter(r -> r.rule().id().equals("change-engine-oil"))
                .map(r -> r.rule().interval().months() + " months, "
                        + r.rule().interval().hours() + " h")
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aSlipOfThePenIsNamedWithTheNearestRule() {
        Programme slip = read("id: own\nname: own\noverridings:\n  - {rule: change-engin-oil, months: 6}\n");
        assertEquals(
                "programme own, overriding 1 (rule change-engin-oil), rule: \"change-engin-oil\": there is no rule of this"
                        + " name; did you mean \"change-engine-oil\"?",
                ProgrammeCheck.faults(List.of(Shipped.genericProgramme(), slip), Shipped.catalogue(), List.of())
                        .get(0)
                        .line());
    }
}

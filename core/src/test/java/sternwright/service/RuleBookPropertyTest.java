package sternwright.service;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sternwright.boat.Arrangement;
import sternwright.boat.Boat;
import sternwright.boat.Cooling;
import sternwright.boat.Installation;
import sternwright.boat.Part;

/** The rule book against the plain reading of its promise: for each field the narrowest, among equals the latest. */
class RuleBookPropertyTest {
    private static final List<Scope> SCOPES = List.of(Scope.YARD, Scope.ENGINE_MODEL, Scope.BOAT, Scope.PART);
    private static final List<String> MODELS = List.of("X-30", "Y-50");
    private static final List<String> BOATS = List.of("tern", "dunlin");
    private static final List<String> PARTS = List.of("engine", "spare");
    private static final Rule OIL = Rules.rule("change-oil", "engine", Interval.of(12, 200.0));

    static Stream<Long> seeds() {
        return IntStream.range(0, 300).mapToObj(i -> (long) i);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void everyFieldIsTheNarrowestOnes(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Overriding> overridings = new ArrayList<>();
        for (int i = random.nextInt(9); i > 0; i--) {
            overridings.add(overriding(random));
        }
        RuleBook book = RuleBook.of(
                Rules.programme("generic", List.of(OIL), List.of()),
                List.of(
                        Rules.programme("first", List.of(), overridings.subList(0, overridings.size() / 2)),
                        Rules.programme(
                                "second", List.of(), overridings.subList(overridings.size() / 2, overridings.size()))),
                Rules.catalogue());
        for (String boatId : BOATS) {
            for (String model : MODELS) {
                Boat boat = Rules.boat(
                        boatId,
                        null,
                        Arrangement.SHAFT,
                        Cooling.RAW_WATER,
                        model,
                        Part.of("engine", "engine"),
                        Part.of("spare", "engine"));
                for (String part : PARTS) {
                    same(overridings, boat, model, part, book);
                }
            }
        }
    }

    private static void same(List<Overriding> all, Boat boat, String model, String partId, RuleBook book) {
        Installation main = boat.installations().get(0);
        List<RuleInForce> found = book.forPart(boat, main, main.part(partId).orElseThrow());
        List<Overriding> here = all.stream()
                .filter(o -> switch (o.scope()) {
                    case ENGINE_MODEL -> o.target().equalsIgnoreCase(model);
                    case BOAT -> o.target().equals(boat.id());
                    case PART -> o.target().equals(boat.id() + "/main/" + partId);
                    default -> true;
                })
                .toList();
        boolean on = narrowest(here, Overriding::applies).orElse(true);
        assertEquals(on ? 1 : 0, found.size(), here.toString());
        if (on) {
            Rule rule = found.get(0).rule();
            assertEquals(
                    narrowest(here, Overriding::months).orElse(12),
                    rule.interval().months());
            assertEquals(
                    narrowest(here, Overriding::hours).orElse(200.0),
                    rule.interval().hours());
            assertEquals(narrowest(here, Overriding::minutes).orElse(30.0), rule.minutes());
            assertEquals(
                    narrowest(here, Overriding::scope).orElse(Scope.GENERIC),
                    found.get(0).scope());
        }
    }

    private interface Figure<T> extends Function<Overriding, @Nullable T> {}

    private static <T> Optional<T> narrowest(List<Overriding> here, Figure<T> figure) {
        List<Overriding> narrowestLast =
                here.stream().sorted(Comparator.comparing(Overriding::scope)).toList();
        Optional<T> last = Optional.empty();
        for (Overriding o : narrowestLast) {
            T value = figure.apply(o);
            last = value == null ? last : Optional.of(value);
        }
        return last;
    }

    private static Overriding overriding(SplittableRandom random) {
        Scope scope = SCOPES.get(random.nextInt(SCOPES.size()));
        String boat = BOATS.get(random.nextInt(BOATS.size()));
        String target = switch (scope) {
            case ENGINE_MODEL -> random.nextBoolean() ? "x-30" : "Y-50";
            case BOAT -> boat;
            case PART -> boat + "/main/" + PARTS.get(random.nextInt(PARTS.size()));
            default -> "";
        };
        return new Overriding(
                "change-oil",
                scope,
                target,
                random.nextBoolean() ? null : (Integer) (1 + random.nextInt(60)),
                random.nextBoolean() ? null : (Double) (1.0 + random.nextInt(500)),
                null,
                null,
                Set.of(),
                null,
                null,
                random.nextBoolean() ? null : (Double) (1.0 + random.nextInt(90)),
                random.nextInt(5) > 0,
                Rules.source("seed"));
    }
}

package sternwright.service;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import sternwright.boat.Arrangement;
import sternwright.boat.Boat;
import sternwright.boat.Cooling;
import sternwright.boat.Hull;
import sternwright.boat.HullMaterial;
import sternwright.boat.Installation;
import sternwright.boat.Owner;
import sternwright.boat.Part;
import sternwright.boat.PartCatalogue;
import sternwright.boat.PartKind;
import sternwright.boat.Side;
import sternwright.boat.Winter;
import sternwright.finding.Source;
import sternwright.finding.Standing;

/** Small invented rules and boats for tests. */
public final class Rules {
    /** Where the generic figures of these tests come from. */
    public static final Source GENERIC = new Source("service practice", "", Standing.COMMON_PRACTICE);

    private Rules() {}

    /** A rule on one kind with nothing but its interval. */
    public static Rule rule(String id, String kind, Interval interval) {
        return rule(
                id, new AppliesTo(Set.of(kind), Set.of(), Set.of(), Set.of(), Set.of()), interval, Set.of(), List.of());
    }

    /** A rule with tags and cautions. */
    public static Rule rule(String id, AppliesTo to, Interval interval, Set<String> tags, List<String> cautions) {
        return new Rule(
                id,
                "work of " + id,
                "why",
                "if declined",
                to,
                interval,
                Half.ANY,
                Place.EITHER,
                false,
                30,
                null,
                Set.of(),
                List.of(),
                List.of(),
                cautions,
                List.of("do it"),
                false,
                false,
                List.of(),
                List.of(),
                tags,
                0.5,
                0.1,
                GENERIC);
    }

    /** Another number of months, by whom. */
    public static Overriding months(String ruleId, Scope scope, String target, int months) {
        return new Overriding(
                ruleId,
                scope,
                target,
                months,
                null,
                null,
                null,
                Set.of(),
                null,
                null,
                null,
                true,
                source(scope + " months"));
    }

    /** Another number of minutes, by whom. */
    public static Overriding minutes(String ruleId, Scope scope, String target, double minutes) {
        return new Overriding(
                ruleId,
                scope,
                target,
                null,
                null,
                null,
                null,
                Set.of(),
                null,
                null,
                minutes,
                true,
                source(scope + " minutes"));
    }

    /** Switches a rule off or on. */
    public static Overriding applies(String ruleId, Scope scope, String target, boolean applies) {
        return new Overriding(
                ruleId,
                scope,
                target,
                null,
                null,
                null,
                null,
                Set.of(),
                null,
                null,
                null,
                applies,
                source(scope + " off"));
    }

    /** A yard's source. */
    public static Source source(String title) {
        return new Source(title, "", Standing.YARD);
    }

    /** A programme for every boat. */
    public static Programme programme(String id, List<Rule> rules, List<Overriding> overridings) {
        return new Programme(id, id, false, rules, overridings, List.of());
    }

    /** Engine, pump and leg. */
    public static PartCatalogue catalogue() {
        return new PartCatalogue(List.of(
                new PartKind("engine", "engine", "engine", false, null, "engine-oil", Set.of()),
                new PartKind("raw-water-pump", "raw-water pump", "pump", false, null, null, Set.of("raw-water-side")),
                new PartKind("leg", "leg", "leg", true, "aluminium-casting", "gear-oil", Set.of("drive"))));
    }

    /** A boat of one installation, main, with the parts given. */
    public static Boat boat(
            String id,
            @Nullable String programme,
            Arrangement arrangement,
            Cooling cooling,
            @Nullable String model,
            Part... parts) {
        return new Boat(
                id,
                id,
                new Owner("Invented Owner", null),
                "quay",
                "cruising",
                Winter.ASHORE,
                new Hull(10, 3.2, 1.8, 6000, HullMaterial.GRP),
                List.of(new Installation("main", Side.CENTRELINE, arrangement, cooling, model, 20.0, List.of(parts))),
                List.of(),
                programme,
                null);
    }

    /** A part that carries conditions. */
    public static Part with(String id, String kind, String... conditions) {
        return new Part(id, kind, null, null, null, null, 1, null, null, null, null, Set.of(conditions), Map.of());
    }
}

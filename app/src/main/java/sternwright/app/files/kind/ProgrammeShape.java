package sternwright.app.files.kind;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import sternwright.app.files.shape.Block;
import sternwright.app.files.shape.Field;
import sternwright.app.files.shape.Many;
import sternwright.app.files.shape.Numbers;
import sternwright.app.files.shape.Shapes;
import sternwright.app.files.shape.Values;
import sternwright.finding.Caution;
import sternwright.finding.Source;
import sternwright.service.Half;
import sternwright.service.IntervalClause;
import sternwright.service.Overriding;
import sternwright.service.Place;
import sternwright.service.Programme;
import sternwright.service.Rule;
import sternwright.service.Scope;

/** A service programme: {@code programmes/*.yaml} and the generic one inside the program. */
public final class ProgrammeShape {
    private static final Map<String, Scope> SCOPES = new TreeMap<>(
            Map.of("yard", Scope.YARD, "engine-model", Scope.ENGINE_MODEL, "boat", Scope.BOAT, "part", Scope.PART));

    private static final Field<Overriding, String> RULE =
            Field.required("rule", Shapes.id(), Overriding::ruleId, "id of the rule");
    private static final Field<Overriding, Scope> SCOPE =
            Field.or("scope", Shapes.oneOf(SCOPES, Shapes::kebab), Scope.YARD, Overriding::scope, "how far it reaches");
    private static final Field<Overriding, String> TARGET = Field.or(
            "target",
            Shapes.anyText(),
            "",
            Overriding::target,
            "boat id, engine model, or boat/installation/part; empty for the yard");
    private static final Field<Overriding, Integer> MONTHS =
            Field.optional("months", Numbers.count(1), Overriding::months, "interval in months");
    private static final Field<Overriding, Double> HOURS =
            Field.optional("hours", Numbers.positive(), Overriding::hours, "interval in engine hours");
    private static final Field<Overriding, Integer> LIFE =
            Field.optional("life-months", Numbers.count(1), Overriding::lifeMonths, "life in months");
    private static final Field<Overriding, Integer> NTH =
            Field.optional("nth", Numbers.count(2), Overriding::nth, "every n-th");
    private static final Field<Overriding, Set<IntervalClause>> DROP = Field.or(
            "drop",
            Many.set(Shapes.oneOf(IntervalClause.class)),
            Set.of(),
            Overriding::drop,
            "clauses of the rule's interval that do not hold here");
    private static final Field<Overriding, Half> HALF =
            Field.optional("half", Shapes.oneOf(Half.class), Overriding::half, "half of the year");
    private static final Field<Overriding, Place> PLACE =
            Field.optional("place", Shapes.oneOf(Place.class), Overriding::place, "where");
    private static final Field<Overriding, Double> MINUTES = Field.optional(
            "minutes", Numbers.notNegative().atMost(20_000), Overriding::minutes, "working minutes with fair access");
    private static final Field<Overriding, Boolean> APPLIES =
            Field.or("applies", Shapes.yesNo(), true, Overriding::applies, "false switches the rule off");
    private static final Field<Overriding, Source> SOURCE = Field.or(
            "source", SourceShape.SOURCE, SourceShape.OWN_RULE, Overriding::source, "where the figure comes from");

    private static final Block<Overriding> OVERRIDING = Block.of(
            "an overriding",
            "the yard's or a maker's figure in place of a rule's own; a field left out keeps the rule's figure",
            ProgrammeShape::overriding,
            RULE,
            SCOPE,
            TARGET,
            MONTHS,
            HOURS,
            LIFE,
            NTH,
            DROP,
            HALF,
            PLACE,
            MINUTES,
            APPLIES,
            SOURCE);

    private static final Field<Caution, String> CAUTION_ID =
            Field.required("id", Shapes.id(), Caution::id, "short name by which rules refer to it");
    private static final Field<Caution, String> TEXT =
            Field.required("text", Shapes.text(), Caution::text, "what to mind, in full sentences");
    private static final Block<Caution> CAUTION = Block.of(
            "a caution",
            "a caution that stands where work can hurt someone",
            v -> new Caution(v.get(CAUTION_ID), v.get(TEXT)),
            CAUTION_ID,
            TEXT);

    private static final Field<Programme, String> ID =
            Field.required("id", Shapes.id(), Programme::id, "short name of the programme");
    private static final Field<Programme, String> NAME =
            Field.required("name", Shapes.text(), Programme::name, "as people say it");
    private static final Field<Programme, Boolean> ONLY_IF_NAMED = Field.or(
            "only-if-named",
            Shapes.yesNo(),
            false,
            Programme::onlyIfNamed,
            "true if it is only for the boats that name it, false if it is for every boat");
    private static final Field<Programme, List<Rule>> RULES =
            Field.or("rules", Many.list(RuleShape.RULE).uniqueBy(Rule::id), List.of(), Programme::rules, "the rules");
    private static final Field<Programme, List<Overriding>> OVERRIDINGS = Field.or(
            "overridings",
            Many.list(OVERRIDING),
            List.of(),
            Programme::overridings,
            "figures in place of the rules' own");
    private static final Field<Programme, List<Caution>> CAUTIONS = Field.or(
            "cautions",
            Many.list(CAUTION).uniqueBy(Caution::id),
            List.of(),
            Programme::cautions,
            "cautions the rules refer to");

    /** The whole file. */
    public static final Block<Programme> PROGRAMME = Block.of(
            "a programme",
            "a service programme: rules and what leads over them",
            v -> new Programme(
                    v.get(ID), v.get(NAME), v.get(ONLY_IF_NAMED), v.get(RULES), v.get(OVERRIDINGS), v.get(CAUTIONS)),
            ID,
            NAME,
            ONLY_IF_NAMED,
            RULES,
            OVERRIDINGS,
            CAUTIONS);

    private ProgrammeShape() {}

    private static Overriding overriding(Values<Overriding> v) {
        Scope scope = v.get(SCOPE);
        if (scope != Scope.YARD && v.get(TARGET).isEmpty()) {
            throw new IllegalArgumentException("scope " + Shapes.kebab(scope) + " needs a target");
        }
        return new Overriding(
                v.get(RULE),
                scope,
                v.get(TARGET),
                v.orNull(MONTHS),
                v.orNull(HOURS),
                v.orNull(LIFE),
                v.orNull(NTH),
                v.get(DROP),
                v.orNull(HALF),
                v.orNull(PLACE),
                v.orNull(MINUTES),
                v.get(APPLIES),
                v.get(SOURCE));
    }
}

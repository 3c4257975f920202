package sternwright.app.files.kind;

import java.util.List;
import java.util.Set;
import sternwright.app.files.shape.Block;
import sternwright.app.files.shape.Field;
import sternwright.app.files.shape.Many;
import sternwright.app.files.shape.Numbers;
import sternwright.app.files.shape.Shapes;
import sternwright.app.files.shape.Values;
import sternwright.finding.Source;
import sternwright.service.AppliesTo;
import sternwright.service.Half;
import sternwright.service.Interval;
import sternwright.service.Modifier;
import sternwright.service.Place;
import sternwright.service.ReadingAsked;
import sternwright.service.Rule;
import sternwright.service.SupplyNeed;
import sternwright.service.Trigger;

/** One rule of a service programme, as programmes say it. */
final class RuleShape {
    private static final Field<Rule, String> ID =
            Field.required("id", Shapes.id(), Rule::id, "short name, unique in the programme");
    private static final Field<Rule, String> WORK =
            Field.required("work", Shapes.text(), Rule::work, "what is done, as an order");
    private static final Field<Rule, String> WHY =
            Field.or("why", Shapes.anyText(), "", Rule::why, "what it is good for, in words an owner understands");
    private static final Field<Rule, String> IF_DECLINED = Field.or(
            "if-declined", Shapes.anyText(), "", Rule::ifDeclined, "what happens if it is left, in an owner's words");
    private static final Field<Rule, AppliesTo> APPLIES_TO =
            Field.required("applies-to", RulePartsShape.APPLIES_TO, Rule::appliesTo, "which parts the rule is for");
    private static final Field<Rule, Interval> INTERVAL =
            Field.required("interval", IntervalShape.INTERVAL, Rule::interval, "when the work falls due");
    private static final Field<Rule, Half> HALF =
            Field.or("half", Shapes.oneOf(Half.class), Half.ANY, Rule::half, "half of the year the work belongs to");
    private static final Field<Rule, Place> PLACE =
            Field.or("place", Shapes.oneOf(Place.class), Place.EITHER, Rule::place, "where it can be done");
    private static final Field<Rule, Boolean> DIVER = Field.or(
            "diver", Shapes.yesNo(), false, Rule::diver, "a diver may do it afloat although it belongs ashore");
    private static final Field<Rule, Double> MINUTES = Field.required(
            "minutes", Numbers.notNegative().atMost(20_000), Rule::minutes, "working minutes with fair access");
    private static final Field<Rule, String> SERVICE_POINT = Field.optional(
            "service-point", Shapes.id(), Rule::servicePoint, "where one works; empty for the part kind's own");
    private static final Field<Rule, Set<String>> SKILLS =
            Field.or("skills", Many.set(Shapes.id()), Set.of(), Rule::skills, "what the engineer must be able to do");
    private static final Field<Rule, List<SupplyNeed>> SUPPLIES = Field.or(
            "supplies", Many.list(RulePartsShape.SUPPLY), List.of(), Rule::supplies, "what it takes from the stores");
    private static final Field<Rule, List<ReadingAsked>> READINGS = Field.or(
            "readings",
            Many.list(RulePartsShape.READING).uniqueBy(ReadingAsked::name),
            List.of(),
            Rule::readings,
            "measurements the job card asks for");
    private static final Field<Rule, List<String>> CAUTIONS =
            Field.or("cautions", Many.list(Shapes.id()), List.of(), Rule::cautions, "ids of cautions to show");
    private static final Field<Rule, List<String>> STEPS =
            Field.or("steps", Many.list(Shapes.text()), List.of(), Rule::steps, "steps in working order");
    private static final Field<Rule, Boolean> SAFETY = Field.or(
            "safety", Shapes.yesNo(), false, Rule::safety, "never past its life without the owner's signed refusal");
    private static final Field<Rule, Boolean> RENEWS =
            Field.or("renews", Shapes.yesNo(), false, Rule::renews, "the part is new afterwards");
    private static final Field<Rule, List<Modifier>> MODIFIERS = Field.or(
            "modifiers",
            Many.list(IntervalShape.MODIFIER),
            List.of(),
            Rule::modifiers,
            "circumstances that change the interval");
    private static final Field<Rule, List<Trigger>> TRIGGERS = Field.or(
            "triggers",
            Many.list(IntervalShape.TRIGGER),
            List.of(),
            Rule::triggers,
            "findings that make it due at once");
    private static final Field<Rule, Set<String>> TAGS =
            Field.or("tags", Many.set(Shapes.id()), Set.of(), Rule::tags, "words by which other rules refer to it");
    private static final Field<Rule, Double> MATERIAL_SHARE = Field.or(
            "material-share",
            Numbers.notNegative().atMost(1),
            1.0,
            Rule::materialShare,
            "share of the cost thrown away if done before its time");
    private static final Field<Rule, Double> RISK = Field.or(
            "risk-per-month-late",
            Numbers.notNegative(),
            0.0,
            Rule::riskPerMonthLate,
            "what a month past due costs on average in trouble, as a share of the work's price");
    private static final Field<Rule, Source> SOURCE =
            Field.or("source", SourceShape.SOURCE, SourceShape.PRACTICE, Rule::source, "where the figures come from");

    static final Block<Rule> RULE = Block.of(
            "a rule",
            "one rule: the work, on what, when, where, with what",
            RuleShape::rule,
            ID,
            WORK,
            WHY,
            IF_DECLINED,
            APPLIES_TO,
            INTERVAL,
            HALF,
            PLACE,
            DIVER,
            MINUTES,
            SERVICE_POINT,
            SKILLS,
            SUPPLIES,
            READINGS,
            CAUTIONS,
            STEPS,
            SAFETY,
            RENEWS,
            MODIFIERS,
            TRIGGERS,
            TAGS,
            MATERIAL_SHARE,
            RISK,
            SOURCE);

    private RuleShape() {}

    private static Rule rule(Values<Rule> v) {
        Interval interval = v.get(INTERVAL);
        if (interval.equals(Interval.of(null, null)) && v.get(TRIGGERS).isEmpty()) {
            throw new IllegalArgumentException("the interval is empty and there is no trigger, so it never falls due");
        }
        return new Rule(
                v.get(ID),
                v.get(WORK),
                v.get(WHY),
                v.get(IF_DECLINED),
                v.get(APPLIES_TO),
                interval,
                v.get(HALF),
                v.get(PLACE),
                v.get(DIVER),
                v.get(MINUTES),
                v.orNull(SERVICE_POINT),
                v.get(SKILLS),
                v.get(SUPPLIES),
                v.get(READINGS),
                v.get(CAUTIONS),
                v.get(STEPS),
                v.get(SAFETY),
                v.get(RENEWS),
                v.get(MODIFIERS),
                v.get(TRIGGERS),
                v.get(TAGS),
                v.get(MATERIAL_SHARE),
                v.get(RISK),
                v.get(SOURCE));
    }
}

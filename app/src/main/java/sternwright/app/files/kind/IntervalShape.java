package sternwright.app.files.kind;

import java.util.List;
import sternwright.app.files.shape.Block;
import sternwright.app.files.shape.Field;
import sternwright.app.files.shape.Many;
import sternwright.app.files.shape.Numbers;
import sternwright.app.files.shape.Shapes;
import sternwright.service.EveryNth;
import sternwright.service.Interval;
import sternwright.service.Modifier;
import sternwright.service.Occasion;
import sternwright.service.Trigger;

/** When a work falls due, as programmes say it. */
final class IntervalShape {
    private static final Field<EveryNth, String> RULE =
            Field.required("rule", Shapes.id(), EveryNth::ruleId, "id of the other rule");
    private static final Field<EveryNth, Integer> N =
            Field.required("n", Numbers.count(2), EveryNth::n, "every n-th time it is done");
    private static final Block<EveryNth> EVERY_NTH = Block.of(
            "an n-th service", "with every n-th of another rule", v -> new EveryNth(v.get(RULE), v.get(N)), RULE, N);

    private static final Field<Interval, Integer> MONTHS =
            Field.optional("months", Numbers.count(1), Interval::months, "months since it was last done");
    private static final Field<Interval, Double> HOURS =
            Field.optional("hours", Numbers.positive(), Interval::hours, "engine hours since it was last done");
    private static final Field<Interval, Integer> LIFE = Field.optional(
            "life-months", Numbers.count(1), Interval::lifeMonths, "life of the part since fitted or renewed, months");
    private static final Field<Interval, EveryNth> NTH =
            Field.optional("every-nth", EVERY_NTH, Interval::everyNth, "with every n-th of another rule");
    private static final Field<Interval, Occasion> OCCASION = Field.optional(
            "occasion", Shapes.oneOf(Occasion.class), Interval::occasion, "an occasion that makes it due");
    private static final Field<Interval, List<String>> AFTER = Field.or(
            "after",
            Many.list(Shapes.matching(
                    "a rule id, tag:x or event:x",
                    "((tag|event):)?[a-z0-9][a-z0-9._-]*",
                    "Write the id of a rule, tag:leg-work for any rule with that tag, or event:grounding.")),
            List.of(),
            Interval::after,
            "rules (or tag:x, or event:x) after which it is due");
    private static final Field<Interval, String> UNLESS = Field.optional(
            "unless-lasts-to",
            Shapes.id(),
            Interval::unlessLastsTo,
            "when this rule is carried out and the part would not last to its next time, do both together");

    static final Block<Interval> INTERVAL = Block.of(
            "an interval",
            "when the work falls due; the clause that comes first counts",
            v -> new Interval(
                    v.orNull(MONTHS),
                    v.orNull(HOURS),
                    v.orNull(LIFE),
                    v.orNull(NTH),
                    v.orNull(OCCASION),
                    v.get(AFTER),
                    v.orNull(UNLESS)),
            MONTHS,
            HOURS,
            LIFE,
            NTH,
            OCCASION,
            AFTER,
            UNLESS);

    private static final Field<Modifier, String> WHEN = Field.required(
            "when",
            Shapes.matching(
                    "hot-marina, heavy-use or condition:x",
                    "hot-marina|heavy-use|condition:[a-z0-9][a-z0-9._-]*",
                    "Write condition:contaminated for parts that carry that condition."),
            Modifier::when,
            "the circumstance");
    private static final Field<Modifier, Double> FACTOR =
            Field.or("factor", Numbers.positive(), 1.0, Modifier::factor, "multiplies months, hours and life");
    private static final Field<Modifier, Integer> INSTEAD =
            Field.optional("months", Numbers.count(1), Modifier::months, "these months instead of the factor");
    private static final Field<Modifier, String> MODIFIER_WHY =
            Field.required("why", Shapes.text(), Modifier::why, "in words an owner understands");
    private static final Field<Modifier, sternwright.finding.Source> MODIFIER_SOURCE = Field.or(
            "source", SourceShape.SOURCE, SourceShape.PRACTICE, Modifier::source, "where the figure comes from");

    static final Block<Modifier> MODIFIER = Block.of(
            "a modifier",
            "a circumstance that changes the interval",
            v -> new Modifier(
                    v.get(WHEN), v.get(FACTOR), v.orNull(INSTEAD), v.get(MODIFIER_WHY), v.get(MODIFIER_SOURCE)),
            WHEN,
            FACTOR,
            INSTEAD,
            MODIFIER_WHY,
            MODIFIER_SOURCE);

    private static final Field<Trigger, String> READING =
            Field.required("reading", Shapes.id(), Trigger::reading, "name of the reading");
    private static final Field<Trigger, Double> AT_MOST =
            Field.optional("at-most", Numbers.any(), Trigger::atMost, "due if the last reading is at or below this");
    private static final Field<Trigger, Double> AT_LEAST =
            Field.optional("at-least", Numbers.any(), Trigger::atLeast, "due if the last reading is at or above this");
    private static final Field<Trigger, String> TRIGGER_WHY =
            Field.required("why", Shapes.text(), Trigger::why, "in words an owner understands");

    static final Block<Trigger> TRIGGER = Block.of(
            "a trigger",
            "a finding that makes the work due at once",
            v -> {
                if (v.orNull(AT_MOST) == null && v.orNull(AT_LEAST) == null) {
                    throw new IllegalArgumentException("neither at-most nor at-least is given, so nothing pulls it");
                }
                return new Trigger(v.get(READING), v.orNull(AT_MOST), v.orNull(AT_LEAST), v.get(TRIGGER_WHY));
            },
            READING,
            AT_MOST,
            AT_LEAST,
            TRIGGER_WHY);

    private IntervalShape() {}
}

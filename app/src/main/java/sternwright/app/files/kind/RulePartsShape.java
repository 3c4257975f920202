package sternwright.app.files.kind;

import java.util.Set;
import sternwright.app.files.shape.Block;
import sternwright.app.files.shape.Field;
import sternwright.app.files.shape.Many;
import sternwright.app.files.shape.Numbers;
import sternwright.app.files.shape.Shapes;
import sternwright.boat.Arrangement;
import sternwright.boat.Cooling;
import sternwright.finding.Source;
import sternwright.service.AppliesTo;
import sternwright.service.ReadingAsked;
import sternwright.service.SupplyNeed;

/** What a rule is for, takes and asks, as programmes say it. */
final class RulePartsShape {
    private static final Field<AppliesTo, Set<String>> KINDS =
            Field.or("kinds", Many.set(Shapes.id()), Set.of(), AppliesTo::kinds, "ids of kinds of part");
    private static final Field<AppliesTo, Set<String>> TAGS =
            Field.or("tags", Many.set(Shapes.id()), Set.of(), AppliesTo::tags, "tags of kinds of part");
    private static final Field<AppliesTo, Set<Arrangement>> ARRANGEMENTS = Field.or(
            "arrangements",
            Many.set(Shapes.oneOf(Arrangement.class)),
            Set.of(),
            AppliesTo::arrangements,
            "arrangements; empty for all");
    private static final Field<AppliesTo, Set<Cooling>> COOLINGS = Field.or(
            "coolings",
            Many.set(Shapes.oneOf(Cooling.class)),
            Set.of(),
            AppliesTo::coolings,
            "cooling systems; empty for all");
    private static final Field<AppliesTo, Set<String>> CONDITIONS = Field.or(
            "conditions", Many.set(Shapes.id()), Set.of(), AppliesTo::conditions, "conditions the part must carry");

    static final Block<AppliesTo> APPLIES_TO = Block.of(
            "what a rule is for",
            "which parts the rule is for: kinds or tags, narrowed by the rest",
            v -> {
                if (v.get(KINDS).isEmpty() && v.get(TAGS).isEmpty()) {
                    throw new IllegalArgumentException("neither kinds nor tags are given, so the rule is for no part");
                }
                return new AppliesTo(
                        v.get(KINDS), v.get(TAGS), v.get(ARRANGEMENTS), v.get(COOLINGS), v.get(CONDITIONS));
            },
            KINDS,
            TAGS,
            ARRANGEMENTS,
            COOLINGS,
            CONDITIONS);

    private static final Field<SupplyNeed, String> ITEM =
            Field.required("item", Shapes.id(), SupplyNeed::item, "id in the stores");
    private static final Field<SupplyNeed, Double> FIXED =
            Field.or("fixed", Numbers.notNegative(), 0.0, SupplyNeed::fixed, "this many units");
    private static final Field<SupplyNeed, Double> PER_CAPACITY = Field.or(
            "per-capacity",
            Numbers.notNegative(),
            0.0,
            SupplyNeed::perCapacity,
            "plus this many units per litre the part holds");
    private static final Field<SupplyNeed, Double> IF_UNKNOWN = Field.or(
            "if-unknown-l",
            Numbers.notNegative(),
            0.0,
            SupplyNeed::ifUnknownL,
            "litres to allow where the capacity is not known");

    static final Block<SupplyNeed> SUPPLY = Block.of(
            "a supply",
            "what the work takes from the stores",
            v -> {
                if (v.get(FIXED) == 0 && v.get(PER_CAPACITY) == 0) {
                    throw new IllegalArgumentException("both fixed and per-capacity are 0, so nothing is taken");
                }
                return new SupplyNeed(v.get(ITEM), v.get(FIXED), v.get(PER_CAPACITY), v.get(IF_UNKNOWN));
            },
            ITEM,
            FIXED,
            PER_CAPACITY,
            IF_UNKNOWN);

    private static final Field<ReadingAsked, String> NAME =
            Field.required("name", Shapes.id(), ReadingAsked::name, "short name under which it is recorded");
    private static final Field<ReadingAsked, String> LABEL =
            Field.required("label", Shapes.text(), ReadingAsked::label, "as printed");
    private static final Field<ReadingAsked, String> UNIT = Field.required(
            "unit",
            Shapes.text(),
            ReadingAsked::unit,
            "unit; \"1\" in quotes for yes (1) or no (0), pcs for what is counted");
    private static final Field<ReadingAsked, Double> LOW =
            Field.optional("low", Numbers.any(), ReadingAsked::low, "lowest good value");
    private static final Field<ReadingAsked, Double> HIGH =
            Field.optional("high", Numbers.any(), ReadingAsked::high, "highest good value");
    private static final Field<ReadingAsked, Source> SOURCE = Field.or(
            "source", SourceShape.SOURCE, SourceShape.PRACTICE, ReadingAsked::source, "where the limits come from");

    static final Block<ReadingAsked> READING = Block.of(
            "a reading asked",
            "a measurement the job card asks for",
            v -> {
                Double low = v.orNull(LOW);
                Double high = v.orNull(HIGH);
                if (low != null && high != null && low > high) {
                    throw new IllegalArgumentException("low " + low + " is above high " + high);
                }
                return new ReadingAsked(v.get(NAME), v.get(LABEL), v.get(UNIT), low, high, v.get(SOURCE));
            },
            NAME,
            LABEL,
            UNIT,
            LOW,
            HIGH,
            SOURCE);

    private RulePartsShape() {}
}

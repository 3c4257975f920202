package sternwright.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import sternwright.finding.Source;
import sternwright.finding.Standing;
import sternwright.service.AppliesTo;
import sternwright.service.Half;
import sternwright.service.Interval;
import sternwright.service.Place;
import sternwright.service.ReadingAsked;
import sternwright.service.Rule;
import sternwright.service.Trigger;

/** Builds rules for tests with only what a test needs to say. */
public final class RuleOf {
    /** Where the figures of the invented rules come from. */
    public static final Source PRACTICE = new Source("service practice", "", Standing.COMMON_PRACTICE);

    private final String id;
    private final String work;
    private String why = "";
    private String ifDeclined = "";
    private Place place = Place.EITHER;
    private Interval interval = Interval.of(12, null);
    private boolean safety;
    private final List<String> steps = new ArrayList<>();
    private final List<String> cautions = new ArrayList<>();
    private final List<ReadingAsked> readings = new ArrayList<>();
    private final List<Trigger> triggers = new ArrayList<>();
    private Set<String> tags = Set.of();

    private RuleOf(String id, String work) {
        this.id = id;
        this.work = work;
    }

    /** Starts a rule. */
    public static RuleOf rule(String id, String work) {
        return new RuleOf(id, work);
    }

    /** Words for the owner. */
    public RuleOf why(String words, String left) {
        why = words;
        ifDeclined = left;
        return this;
    }

    /** Where. */
    public RuleOf place(Place at) {
        place = at;
        return this;
    }

    /** When. */
    public RuleOf interval(Interval when) {
        interval = when;
        return this;
    }

    /** A safety item. */
    public RuleOf safety() {
        safety = true;
        return this;
    }

    /** Steps in order. */
    public RuleOf steps(String... more) {
        steps.addAll(List.of(more));
        return this;
    }

    /** Ids of cautions. */
    public RuleOf cautions(String... ids) {
        cautions.addAll(List.of(ids));
        return this;
    }

    /** A reading asked. */
    public RuleOf asks(String name, String label, String unit, @Nullable Double low, @Nullable Double high) {
        readings.add(new ReadingAsked(name, label, unit, low, high, PRACTICE));
        return this;
    }

    /** A finding that makes it due. */
    public RuleOf trigger(Trigger trigger) {
        triggers.add(trigger);
        return this;
    }

    /** Tags. */
    public RuleOf tags(String... words) {
        tags = Set.of(words);
        return this;
    }

    /** The rule. */
    public Rule build() {
        return new Rule(
                id,
                work,
                why,
                ifDeclined,
                new AppliesTo(Set.of(), Set.of(), Set.of(), Set.of(), Set.of()),
                interval,
                Half.ANY,
                place,
                false,
                30,
                null,
                Set.of(),
                List.of(),
                readings,
                cautions,
                steps,
                safety,
                false,
                List.of(),
                triggers,
                tags,
                0,
                0,
                PRACTICE);
    }
}

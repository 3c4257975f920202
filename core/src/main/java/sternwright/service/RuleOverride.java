package sternwright.service;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One rule while overridings are put in, field by field, the narrowest last.
 *
 * @param held the rule with what has been put in so far
 * @param on false once switched off, true again once a narrower one switches it on
 */
record RuleOverride(RuleInForce held, boolean on) {

    /** With one overriding put in; figures it does not give stay as they are. */
    RuleOverride put(Overriding over) {
        Rule r = held.rule();
        Rule changed = copy(
                r,
                interval(r.interval(), over),
                over.half() == null ? r.half() : over.half(),
                over.place() == null ? r.place() : over.place(),
                over.minutes() == null ? r.minutes() : over.minutes(),
                r.servicePoint());
        boolean changes = changesFigures(over);
        List<FigureStep> chain = new ArrayList<>(held.chain());
        if (changes) {
            chain.add(new FigureStep(over.scope(), FigureWords.of(over), over.source()));
        }
        return new RuleOverride(
                new RuleInForce(changed, over.scope(), changes ? over.source() : held.source(), chain), over.applies());
    }

    /** The rule with the service point of the kind of part it is done on, if it names none itself. */
    RuleOverride at(String servicePoint) {
        Rule r = held.rule();
        if (r.servicePoint() != null) {
            return this;
        }
        Rule placed = copy(r, r.interval(), r.half(), r.place(), r.minutes(), servicePoint);
        return new RuleOverride(new RuleInForce(placed, held.scope(), held.source(), held.chain()), on);
    }

    private static boolean changesFigures(Overriding o) {
        return o.months() != null
                || o.hours() != null
                || o.lifeMonths() != null
                || o.nth() != null
                || !o.drop().isEmpty()
                || o.half() != null
                || o.place() != null
                || o.minutes() != null;
    }

    private static Interval interval(Interval i, Overriding over) {
        EveryNth nth = i.everyNth();
        Integer n = over.nth();
        return new Interval(
                held(over, IntervalClause.MONTHS, over.months(), i.months()),
                held(over, IntervalClause.HOURS, over.hours(), i.hours()),
                held(over, IntervalClause.LIFE_MONTHS, over.lifeMonths(), i.lifeMonths()),
                nth == null || n == null ? nth : new EveryNth(nth.ruleId(), n),
                i.occasion(),
                i.after(),
                i.unlessLastsTo());
    }

    private static <T> @Nullable T held(Overriding over, IntervalClause clause, @Nullable T instead, @Nullable T own) {
        if (over.drop().contains(clause)) {
            return null;
        }
        return instead == null ? own : instead;
    }

    private static Rule copy(
            Rule r, Interval interval, Half half, Place place, double minutes, @Nullable String servicePoint) {
        return new Rule(
                r.id(),
                r.work(),
                r.why(),
                r.ifDeclined(),
                r.appliesTo(),
                interval,
                half,
                place,
                r.diver(),
                minutes,
                servicePoint,
                r.skills(),
                r.supplies(),
                r.readings(),
                r.cautions(),
                r.steps(),
                r.safety(),
                r.renews(),
                r.modifiers(),
                r.triggers(),
                r.tags(),
                r.materialShare(),
                r.riskPerMonthLate(),
                r.source());
    }
}

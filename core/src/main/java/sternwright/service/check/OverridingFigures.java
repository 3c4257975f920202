package sternwright.service.check;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import sternwright.service.Interval;
import sternwright.service.IntervalClause;
import sternwright.service.Overriding;
import sternwright.service.Rule;

/** Whether the figures of one overriding can be. */
record OverridingFigures(Spot at, Overriding over, List<ProgrammeFault> faults) {

    void check() {
        atLeast("months", over.months(), 1);
        atLeast("life-months", over.lifeMonths(), 1);
        atLeast("nth", over.nth(), 2);
        atLeast("minutes", over.minutes(), 1);
        if (over.hours() != null && !(over.hours() > 0)) {
            fault("hours", over.hours(), "must be above 0");
        }
        both(IntervalClause.MONTHS, over.months());
        both(IntervalClause.HOURS, over.hours());
        both(IntervalClause.LIFE_MONTHS, over.lifeMonths());
    }

    private void both(IntervalClause clause, @Nullable Number value) {
        if (value != null && over.drop().contains(clause)) {
            faults.add(new ProgrammeFault(
                    at.at("drop"),
                    clause.field(),
                    "it is given and dropped at once: leave out " + clause.field() + ": " + value + " or the drop",
                    null));
        }
    }

    /** What is dropped must be there, in the rule or by another overriding, and something must be left that makes the work due. */
    void against(Rule rule, Set<IntervalClause> givenElsewhere) {
        Interval i = rule.interval();
        Set<IntervalClause> has = EnumSet.noneOf(IntervalClause.class);
        add(has, IntervalClause.MONTHS, i.months());
        add(has, IntervalClause.HOURS, i.hours());
        add(has, IntervalClause.LIFE_MONTHS, i.lifeMonths());
        has.addAll(givenElsewhere);
        for (IntervalClause clause : over.drop()) {
            if (!has.contains(clause)) {
                faults.add(new ProgrammeFault(
                        at.at("drop"),
                        clause.field(),
                        "the rule has no " + clause.field() + " to drop: it has "
                                + (has.isEmpty() ? "none of the clauses that can be" : words(has)),
                        null));
            }
        }
        has.removeAll(over.drop());
        has.addAll(given(over));
        boolean other = i.everyNth() != null
                || i.occasion() != null
                || !i.after().isEmpty()
                || i.unlessLastsTo() != null
                || !rule.triggers().isEmpty();
        if (!over.drop().isEmpty() && has.isEmpty() && !other) {
            faults.add(new ProgrammeFault(
                    at.at("drop"),
                    words(over.drop()),
                    "nothing is left that makes the work due: write applies: false to switch the rule off",
                    null));
        }
    }

    /** The clauses an overriding gives. */
    static Set<IntervalClause> given(Overriding over) {
        Set<IntervalClause> given = EnumSet.noneOf(IntervalClause.class);
        add(given, IntervalClause.MONTHS, over.months());
        add(given, IntervalClause.HOURS, over.hours());
        add(given, IntervalClause.LIFE_MONTHS, over.lifeMonths());
        return given;
    }

    private static void add(Set<IntervalClause> has, IntervalClause clause, @Nullable Number value) {
        if (value != null) {
            has.add(clause);
        }
    }

    private static String words(Set<IntervalClause> clauses) {
        return clauses.stream().sorted().map(IntervalClause::field).collect(Collectors.joining(", "));
    }

    private void atLeast(String field, @Nullable Number value, int least) {
        if (value != null && !(value.doubleValue() >= least)) {
            fault(field, value, "must be at least " + least);
        }
    }

    private void fault(String field, Number written, String expected) {
        faults.add(new ProgrammeFault(at.at(field), "" + written, expected, null));
    }
}

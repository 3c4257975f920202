package sternwright.service;

import java.util.Set;
import org.jspecify.annotations.Nullable;
import sternwright.finding.Source;

/**
 * The yard's or a maker's figure in place of a rule's own. Null leaves the rule's figure; a dropped clause takes it out.
 *
 * @param ruleId the rule
 * @param scope how far it reaches
 * @param target boat id, engine model, or {@code boat/installation/part}; empty for the yard
 * @param months interval in months
 * @param hours interval in engine hours
 * @param lifeMonths life in months
 * @param nth every n-th
 * @param drop clauses of the interval that do not hold here, such as hours where the meter counts nothing; empty for none
 * @param half half of the year
 * @param place where
 * @param minutes working minutes
 * @param applies false switches the rule off
 * @param source where the figure comes from
 */
public record Overriding(
        String ruleId,
        Scope scope,
        String target,
        @Nullable Integer months,
        @Nullable Double hours,
        @Nullable Integer lifeMonths,
        @Nullable Integer nth,
        Set<IntervalClause> drop,
        @Nullable Half half,
        @Nullable Place place,
        @Nullable Double minutes,
        boolean applies,
        Source source) {
    /** Copies the set. */
    public Overriding {
        drop = Set.copyOf(drop);
    }

    /**
     * The figures it gives and the clauses it takes out, in a few words.
     *
     * @return such as {@code 12 months, no h}; empty if it changes no figure
     */
    public String figures() {
        return FigureWords.of(this);
    }
}

package sternwright.service;

import java.util.List;
import java.util.stream.Collectors;
import sternwright.finding.Source;

/**
 * A rule as it holds for one part, with whatever leads over it already put in.
 *
 * @param rule the rule with the figures that hold
 * @param scope the narrowest scope that changed it
 * @param source the source of the figures that hold
 * @param chain where the figures come from, the programme's own first, then each overriding that changed one
 */
public record RuleInForce(Rule rule, Scope scope, Source source, List<FigureStep> chain) {
    /** Copies the list. */
    public RuleInForce {
        chain = List.copyOf(chain);
    }

    /**
     * A rule over which nothing leads.
     *
     * @param rule the rule
     * @param scope how far its programme reaches
     * @param source the source of its figures
     */
    public RuleInForce(Rule rule, Scope scope, Source source) {
        this(rule, scope, source, List.of(new FigureStep(scope, FigureWords.of(rule), source)));
    }

    /**
     * Where the figures come from, in one line.
     *
     * @return the source; where something was overridden the whole chain, the programme's own figures first
     */
    public String sources() {
        return chain.size() < 2
                ? source.line()
                : chain.stream().map(FigureStep::line).collect(Collectors.joining("; then "));
    }

    /**
     * By what rule and source the figures hold, in one line.
     *
     * @return scope and source, or the whole chain, which names its scopes
     */
    public String sourceLine() {
        return chain.size() < 2 ? scope.words() + ": " + sources() : sources();
    }
}

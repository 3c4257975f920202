package sternwright.service;

import sternwright.finding.Source;

/**
 * A rule as it holds for one part, with whatever leads over it already put in.
 *
 * @param rule the rule with the figures that hold
 * @param scope the narrowest scope that changed it
 * @param source the source of the figures that hold
 */
public record RuleInForce(Rule rule, Scope scope, Source source) {}

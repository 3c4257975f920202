package sternwright.service;

/**
 * Due at every n-th time another rule is carried out on the same part, and together with it.
 *
 * @param ruleId the other rule
 * @param n every n-th, at least 2
 */
public record EveryNth(String ruleId, int n) {}

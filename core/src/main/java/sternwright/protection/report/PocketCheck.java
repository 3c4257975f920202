package sternwright.protection.report;

/**
 * A pocket formula beside what the network says.
 *
 * @param what what it tells
 * @param formula the formula with its figures
 * @param pocket its result
 * @param network the network's
 * @param unit unit of both
 */
public record PocketCheck(String what, String formula, double pocket, double network, String unit) {}

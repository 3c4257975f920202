package sternwright.protection.circuit;

/**
 * The water path that two bodies share: the current of one lifts the water at the other by this resistance.
 *
 * @param a one body
 * @param b the other
 * @param ohm mutual resistance, ohm, zero or more; never above the geometric mean of the two bodies' own
 */
public record MutualResistance(String a, String b, double ohm) {}

package sternwright.boat;

import org.jspecify.annotations.Nullable;

/**
 * Two parts joined in metal, or two that must never be.
 *
 * @param from one part
 * @param to the other
 * @param resistanceOhm resistance of the joint, Ω; null if not measured
 * @param never true if the two must stay isolated, such as a saildrive leg and its engine
 */
public record Bond(PartRef from, PartRef to, @Nullable Double resistanceOhm, boolean never) {}

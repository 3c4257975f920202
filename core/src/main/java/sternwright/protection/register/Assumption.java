package sternwright.protection.register;

import sternwright.finding.Source;

/**
 * A figure that the register does not give.
 *
 * @param key the name by which it is overridden, such as {@code port/leg.area-m2}
 * @param words what it is
 * @param value the figure used
 * @param unit its unit, empty for a share
 * @param source where it comes from; the yard's own where it was overridden
 * @param overridden whether the yard gave it
 */
public record Assumption(String key, String words, double value, String unit, Source source, boolean overridden) {}

package sternwright.service;

import org.jspecify.annotations.Nullable;
import sternwright.finding.Source;

/**
 * A circumstance that changes an interval.
 *
 * @param when {@code hot-marina}, {@code heavy-use}, or {@code condition:x} for a part that carries condition x
 * @param factor multiplies months, hours and life; above 0
 * @param months these months instead, null to use the factor
 * @param why in words an owner understands
 * @param source where it comes from
 */
public record Modifier(String when, double factor, @Nullable Integer months, String why, Source source) {}

package sternwright.protection.metal;

import org.jspecify.annotations.Nullable;
import sternwright.finding.Source;

/**
 * When a metal counts as protected, V against silver/silver chloride in seawater.
 *
 * @param protectedAtV protected at this potential or below
 * @param notBelowV below this it is overprotected; null where there is no such limit
 * @param overHarm what overprotection does to it, in words; empty where there is no limit
 * @param source of the upper limit
 * @param overSource of the lower limit, null where there is none
 */
public record Criterion(
        double protectedAtV,
        @Nullable Double notBelowV,
        String overHarm,
        Source source,
        @Nullable Source overSource) {}

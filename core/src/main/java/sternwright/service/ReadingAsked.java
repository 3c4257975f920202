package sternwright.service;

import org.jspecify.annotations.Nullable;
import sternwright.finding.Source;

/**
 * A measurement the job card asks for.
 *
 * @param name short name under which it is recorded
 * @param label as printed
 * @param unit unit, {@code 1} for yes (1) or no (0)
 * @param low lowest good value, null for none
 * @param high highest good value, null for none
 * @param source where the limits come from
 */
public record ReadingAsked(
        String name,
        String label,
        String unit,
        @Nullable Double low,
        @Nullable Double high,
        Source source) {}

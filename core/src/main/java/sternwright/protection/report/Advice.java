package sternwright.protection.report;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import sternwright.finding.Severity;

/**
 * One thing to do, in words for the owner.
 *
 * @param severity how much it matters
 * @param found what was found, one sentence
 * @param act what to do, one or more sentences
 * @param by the day by which to do it; null where none is computed
 * @param caution what can hurt in doing so; empty if nothing beyond the usual
 */
public record Advice(
        Severity severity,
        String found,
        String act,
        @Nullable LocalDate by,
        String caution) {
    /** Work on shore power. */
    static final String SHORE_POWER =
            "Shore power kills: this is work for a qualified electrician, and the earth is never taken off.";

    /** Work under water. */
    static final String IN_THE_WATER = "Nobody goes into the water while the boat or a neighbour is on shore power.";
}

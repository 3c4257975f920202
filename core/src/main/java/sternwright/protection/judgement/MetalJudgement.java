package sternwright.protection.judgement;

import org.jspecify.annotations.Nullable;
import sternwright.finding.Severity;
import sternwright.finding.Source;

/**
 * A judged potential.
 *
 * @param state how the metal stands
 * @param severity how much it matters
 * @param potentialV the potential, V against silver/silver chloride in seawater
 * @param protectedAtV limit that protection needs, V; null where there is none
 * @param notBelowV limit of overprotection, V; null where there is none
 * @param reason one sentence with figures
 * @param source of the limit that decided; null where there is none
 */
public record MetalJudgement(
        Protection state,
        Severity severity,
        double potentialV,
        @Nullable Double protectedAtV,
        @Nullable Double notBelowV,
        String reason,
        @Nullable Source source) {}

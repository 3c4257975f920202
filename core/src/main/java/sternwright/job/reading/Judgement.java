package sternwright.job.reading;

import sternwright.finding.Severity;
import sternwright.finding.Source;
import sternwright.history.TakenReading;
import sternwright.service.ReadingAsked;

/**
 * A reading with its verdict.
 *
 * @param asked the reading as asked, with its limits
 * @param taken what was measured
 * @param severity fine, watch, act or unsafe
 * @param grounds what the verdict rests on
 * @param why in one sentence
 * @param source where the limit comes from
 */
public record Judgement(
        ReadingAsked asked, TakenReading taken, Severity severity, Grounds grounds, String why, Source source) {
    /** What a verdict rests on. */
    public enum Grounds {
        /** No limit is given: it is only noted. */
        NO_LIMIT,
        /** Well inside its limits. */
        INSIDE,
        /** Inside, but within a tenth of a limit. */
        NEAR_LIMIT,
        /** Inside, but past a limit next time if it changes as much again. */
        DRIFTING,
        /** Below the lowest or above the highest good value. */
        OUTSIDE,
        /** A finding that makes a work due at once. */
        TRIGGER
    }
}

package sternwright.finding;

/** How much a finding matters, mildest first. */
public enum Severity {
    /** Within its limits. */
    FINE,
    /** Drifting: look again at the next visit. */
    WATCH,
    /** Out of its limits: act at this visit or name the next one. */
    ACT,
    /** Not to be used before it is put right. */
    UNSAFE
}

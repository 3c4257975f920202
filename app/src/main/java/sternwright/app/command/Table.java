package sternwright.app.command;

/** The tables that go in and out. */
enum Table {
    /** The register. */
    BOATS,
    /** Meter readings. */
    HOURS,
    /** What was done. */
    HISTORY
}

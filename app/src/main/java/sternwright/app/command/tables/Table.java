package sternwright.app.command.tables;

/** The tables that go in and out. */
public enum Table {
    /** The register. */
    BOATS,
    /** Meter readings. */
    HOURS,
    /** What was done. */
    HISTORY,
    /** The whole yard. */
    FOLDER
}

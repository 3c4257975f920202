package sternwright.boat;

/** Where the boat spends the months between lay-up and recommission. */
public enum Winter {
    /** Hauled every winter. */
    ASHORE,
    /** Stays in the water, laid up. */
    AFLOAT,
    /** In use all year; hauled only for work. */
    IN_USE
}

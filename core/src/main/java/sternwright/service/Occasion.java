package sternwright.service;

/** An occasion that makes a work due whatever the calendar and the meter say. */
public enum Occasion {
    /** Every lay-up. */
    EVERY_LAY_UP,
    /** Every lay-up where it freezes, before the first frost. */
    EVERY_LAY_UP_BEFORE_FROST,
    /** Every recommission. */
    EVERY_RECOMMISSION,
    /** Every visit to the boat. */
    EVERY_VISIT
}

package sternwright.due;

/** Which kind of clause made a work due. */
public enum ClauseKind {
    /** Months since it was last done. */
    MONTHS,
    /** Engine hours since it was last done. */
    HOURS,
    /** The life of the part is over. */
    LIFE,
    /** Every n-th time of another work. */
    NTH,
    /** Every lay-up, recommission or visit. */
    OCCASION,
    /** Another work was done, or something happened. */
    AFTER,
    /** A finding asks for it. */
    CONDITION,
    /** Measured or predicted wear says when. */
    WASTAGE,
    /** Another work opens the way and this part would not last to the next time. */
    OPPORTUNITY,
    /** Nothing is known of when it was last done. */
    UNKNOWN
}

package sternwright.history;

/** What an entry of the history says. */
public enum Outcome {
    /** The work was done. */
    DONE,
    /** Only looked at or measured; the work itself was not done. */
    SEEN,
    /** The owner signed that the work is not to be done. */
    REFUSED,
    /** Something happened to the boat, such as a grounding. */
    HAPPENED
}

package sternwright.job.estimate;

/** What the owner says to a line. */
public enum OwnerAnswer {
    /** No answer yet: counted in. */
    OPEN,
    /** To be done. */
    ACCEPTED,
    /** Not to be done: not counted in. */
    DECLINED
}

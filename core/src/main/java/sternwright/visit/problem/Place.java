package sternwright.visit.problem;

/** Where the boat is while a work is done. */
public enum Place {
    /** In the water, at its berth or a working pontoon: the yard is called out. */
    AFLOAT,
    /** Out of the water, on hard standing. */
    ASHORE
}

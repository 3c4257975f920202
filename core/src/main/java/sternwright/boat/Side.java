package sternwright.boat;

/** Where an installation sits, seen from aft looking forward. */
public enum Side {
    /** Left. */
    PORT,
    /** Right. */
    STARBOARD,
    /** Middle. */
    CENTRELINE
}

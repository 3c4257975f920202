package sternwright.boat;

/** What the boat is plugged into at its berth. */
public enum ShorePower {
    /** None. */
    NONE,
    /** Shore earth joined to the boat's earth straight through. */
    EARTHED,
    /** Shore earth through a galvanic isolator. */
    GALVANIC_ISOLATOR,
    /** Through an isolation transformer: no metallic earth to shore. */
    ISOLATION_TRANSFORMER
}

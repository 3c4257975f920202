package sternwright.boat;

/** What the hull is made of; metal hulls take part in the protection circuit. */
public enum HullMaterial {
    /** Glass-reinforced plastic. */
    GRP,
    /** Steel. */
    STEEL,
    /** Aluminium. */
    ALUMINIUM,
    /** Wood. */
    WOOD
}

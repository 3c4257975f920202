package sternwright.protection.fault;

/** Kinds of fault, with how often one is met at a boat that gives cause to look. */
public enum FaultKind {
    /** Anode wasted away. */
    ANODE_SPENT("anode spent", 0.06),
    /** Anode painted over. */
    ANODE_PAINTED("anode painted over", 0.015),
    /** Anode of the wrong alloy: magnesium in salt water. */
    WRONG_ANODE("magnesium anode fitted", 0.005),
    /** Joint of an anode open. */
    ANODE_LOOSE("anode not connected", 0.03),
    /** Joint of an anode corroded. */
    ANODE_JOINT_CORRODED("anode joint corroded", 0.03),
    /** Bonding wire off. */
    BOND_OPEN("bonding wire off", 0.03),
    /** Bonding joint corroded. */
    BOND_CORRODED("bond corroded", 0.03),
    /** Shaft brush or shaft line with poor contact. */
    SHAFT_CONTACT_POOR("poor contact on the shaft line", 0.03),
    /** Two parts that must be isolated are joined. */
    ISOLATION_BRIDGED("isolation bridged", 0.03),
    /** Metal that stood by itself joined to the boat's earth by a well-meant wire. */
    WRONG_BOND("joined to the boat's earth by mistake", 0.01),
    /** Isolation leaks. */
    ISOLATION_LEAKS("isolation leaks", 0.03),
    /** Galvanic isolator failed short. */
    ISOLATOR_SHORT("galvanic isolator failed short", 0.03),
    /** Paint gone. */
    PAINT_GONE("paint gone", 0.05),
    /** More oxygen or warmer, saltier water than the berth's figures say. */
    HOT_BERTH("berth takes more from the anodes than its figures say", 0.05),
    /** Direct current leaking from the boat's own battery. */
    STRAY_FROM_BOARD("stray current from the boat's battery", 0.002),
    /** Direct current arriving over the shore earth. */
    STRAY_FROM_SHORE("stray current over the shore earth", 0.003);

    private final String words;
    private final double usual;

    FaultKind(String words, double usual) {
        this.words = words;
        this.usual = usual;
    }

    /** The kind in plain words. */
    public String words() {
        return words;
    }

    /**
     * Probability at a berth known for anodes that go unusually fast: more load than the berth's figures say is then as likely as not, and
     * current over the shore earth several times likelier; common practice, no source.
     */
    public double usualInHotMarina() {
        return switch (this) {
            case HOT_BERTH -> 0.4;
            case STRAY_FROM_SHORE -> 0.02;
            default -> usual;
        };
    }

    /** Whether there may be several on a boat, so that the place has to be named. */
    boolean ofThePlace() {
        return this != HOT_BERTH && this != ISOLATOR_SHORT && this != STRAY_FROM_SHORE;
    }

    /** Probability of one such fault at one place, before any reading; from memory. */
    public double usual() {
        return usual;
    }
}

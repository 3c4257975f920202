package sternwright.protection.anode;

/** How far anodes are followed. */
public enum Outlook {
    /** Until every anode is half gone: enough to say when each is renewed. */
    TO_RENEWAL(0.5),
    /** Until every anode's usable share is gone. */
    TO_THE_END(1 - WastageSolver.UTILISATION);

    private final double until;

    Outlook(double until) {
        this.until = until;
    }

    /** Share of the mass at which an anode is followed no further. */
    double until() {
        return until;
    }
}

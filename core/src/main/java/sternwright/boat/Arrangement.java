package sternwright.boat;

/** How power gets from engine to water. */
public enum Arrangement {
    /** Gearbox, shaft, stern gland or seal, propeller. */
    SHAFT,
    /** Leg through the hull behind a rubber diaphragm seal. */
    SAILDRIVE,
    /** Transom unit with bellows, gimbal bearing and rams. */
    STERNDRIVE,
    /** Underwater unit on a swivelling seal. */
    POD,
    /** Impeller in a tunnel with bucket and nozzle. */
    JET
}

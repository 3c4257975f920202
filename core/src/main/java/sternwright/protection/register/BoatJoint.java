package sternwright.protection.register;

import sternwright.protection.circuit.Link;

/**
 * What a link of the circuit is on the boat.
 *
 * @param link the link
 * @param name as people say it
 * @param kind what it is, which says what can go wrong with it
 * @param registered whether the register names it; else the arrangement has it by nature
 */
public record BoatJoint(Link link, String name, Kind kind, boolean registered) {
    /** Whether one can put a meter across it. */
    public boolean measurable() {
        return kind != Kind.ONE_PIECE;
    }

    /** Kinds of joint. */
    public enum Kind {
        /** An anode's bolt, strap or clamp. */
        ANODE_JOINT,
        /** No joint: two sides of one piece of metal. */
        ONE_PIECE,
        /** A shaft, spline, bearing or flange that carries current by nature. */
        SHAFT_LINE,
        /** A brush on a shaft. */
        SHAFT_BRUSH,
        /** A bonding wire or strap. */
        BONDING,
        /** Must stay open: shim, insulated mount. */
        ISOLATION,
        /** The earth of the shore lead, with or without isolator. */
        SHORE_EARTH,
        /** Battery negative between two engines. */
        BATTERY_NEGATIVE
    }
}

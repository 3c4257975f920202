package sternwright.protection.register;

import org.jspecify.annotations.Nullable;
import sternwright.boat.PartRef;
import sternwright.protection.metal.Metal;

/**
 * What a body of the circuit is on the boat.
 *
 * @param id its name in the circuit
 * @param ref the part, null for the marina and for a hull that is no part
 * @param name as people say it
 * @param kind kind of the part, or {@code hull}, {@code marina}
 * @param metal its metal
 * @param areaM2 whole wetted area, m2
 * @param massKg mass of an anode when new, kg; null for others
 * @param coatedShare share of the area under paint, 0 to 1
 */
public record BoatBody(
        String id,
        @Nullable PartRef ref,
        String name,
        String kind,
        Metal metal,
        double areaM2,
        @Nullable Double massKg,
        double coatedShare) {
    /** Whether it is a sacrificial anode. */
    public boolean anode() {
        return metal.alloy() != null;
    }

    /** Whether a half cell can be hung close to it; the metal of engine and passages is felt only through the hoses. */
    public boolean reachable() {
        return onBoard() && areaM2 > 0 && !kind.equals("engine") && !inside();
    }

    /** Whether it is the inside of a drive, which no anode outside reaches well. */
    public boolean inside() {
        return kind.equals(RawWaterPath.INSIDE);
    }

    /** Whether it is part of the boat and not of the marina. */
    public boolean onBoard() {
        return !kind.equals("marina");
    }
}

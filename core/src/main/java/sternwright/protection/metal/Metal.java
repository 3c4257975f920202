package sternwright.protection.metal;

import java.util.List;
import org.jspecify.annotations.Nullable;
import sternwright.finding.Source;
import sternwright.protection.circuit.Body;
import sternwright.protection.circuit.Reaction;

/**
 * A metal of the catalogue.
 *
 * @param id short name as in a boat's file
 * @param name as people say it
 * @param family what it behaves like
 * @param freePotentialV potential it takes by itself in flowing seawater, V against silver/silver chloride in seawater
 * @param freeSource where that comes from
 * @param seaCurve reactions in sea and brackish water, at a still berth
 * @param freshCurve reactions in fresh water, at a still berth
 * @param curveSource where the curves come from
 * @param criterion when it is protected; null for anode alloys and metals that need none
 * @param alloy what it gives as an anode, null if it is none
 */
public record Metal(
        String id,
        String name,
        Family family,
        double freePotentialV,
        Source freeSource,
        List<Reaction> seaCurve,
        List<Reaction> freshCurve,
        Source curveSource,
        @Nullable Criterion criterion,
        @Nullable AnodeAlloy alloy) {
    /** Kinds of metal that behave alike. */
    public enum Family {
        /** Steel and cast iron. */
        IRON,
        /** Aluminium as a structure. */
        ALUMINIUM,
        /** Copper and its alloys. */
        COPPER,
        /** Stainless steels, nickel alloys, titanium. */
        PASSIVE,
        /** Lead. */
        LEAD,
        /** Sacrificial alloys. */
        ANODE
    }

    public Metal {
        seaCurve = List.copyOf(seaCurve);
        freshCurve = List.copyOf(freshCurve);
    }

    /**
     * The polarisation curve in a water.
     *
     * @param fresh whether the water is fresh
     * @param oxygenSupply oxygen limit over that of a still berth; multiplies the limits of cathodic reactions
     */
    public List<Reaction> curve(boolean fresh, double oxygenSupply) {
        return (fresh ? freshCurve : seaCurve)
                .stream()
                        .map(r -> r.kind() == Reaction.Kind.CATHODIC && r.limitAPerM2() != Reaction.NO_LIMIT
                                ? r.withLimitTimes(oxygenSupply)
                                : r)
                        .toList();
    }

    /** Potential at which this metal by itself gives as much as it takes, V. */
    public double freePotentialV(boolean fresh) {
        return freePotentialV(curve(fresh, 1));
    }

    static double freePotentialV(List<Reaction> curve) {
        Body body = new Body("", "", 1, 1, 0, curve);
        double low = -3;
        double high = 2;
        for (int k = 0; k < 60; k++) {
            double middle = (low + high) / 2;
            if (body.currentA(middle) < 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }
}

package sternwright.protection.circuit;

import java.util.List;

/**
 * A piece of metal at one potential, wet or not.
 *
 * @param id short name, unique in its circuit
 * @param material name of the metal for the reader; the solver uses only the reactions
 * @param areaM2 wetted area, m2, zero or more; zero makes the body a mere joint in the wiring
 * @param bareFraction share of the area not covered by sound paint, 0 to 1
 * @param waterOhm resistance from the body to remote water, ohm, zero or more
 * @param reactions the polarisation curve as a sum of reactions, per m2 of bare metal
 */
public record Body(
        String id, String material, double areaM2, double bareFraction, double waterOhm, List<Reaction> reactions) {
    public Body {
        reactions = List.copyOf(reactions);
    }

    /** Bare wetted area, m2. */
    public double bareAreaM2() {
        return areaM2 * bareFraction;
    }

    /** Whether current can pass between this body and the water at all. */
    public boolean wet() {
        return bareAreaM2() > 0 && !reactions.isEmpty();
    }

    /** Current that leaves the metal into the water at an interface potential, A; rises with the potential. */
    public double currentA(double interfaceV) {
        double sum = 0;
        for (Reaction r : reactions) {
            sum += r.sign() * r.densityAPerM2(interfaceV);
        }
        return sum * bareAreaM2();
    }

    /** The part of {@link #currentA} that dissolves metal, A. */
    public double anodicCurrentA(double interfaceV) {
        double sum = 0;
        for (Reaction r : reactions) {
            sum += r.kind() == Reaction.Kind.ANODIC ? r.densityAPerM2(interfaceV) : 0;
        }
        return sum * bareAreaM2();
    }

    /** The same body with another area. */
    public Body withAreaM2(double area) {
        return new Body(id, material, area, bareFraction, waterOhm, reactions);
    }

    /** The same body with another bare share. */
    public Body withBareFraction(double fraction) {
        return new Body(id, material, areaM2, fraction, waterOhm, reactions);
    }

    /** The same body with another resistance to remote water, ohm. */
    public Body withWaterOhm(double ohm) {
        return new Body(id, material, areaM2, bareFraction, ohm, reactions);
    }

    /** The same body of another metal. */
    public Body withMetal(String name, List<Reaction> curve) {
        return new Body(id, name, areaM2, bareFraction, waterOhm, curve);
    }
}

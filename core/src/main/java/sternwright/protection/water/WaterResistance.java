package sternwright.protection.water;

import sternwright.finding.Source;
import sternwright.finding.Standing;

/** Resistance from a body to remote water by its shape, ohm; resistivity in ohm m, lengths in m. */
public final class WaterResistance {
    /** Dwight's formula and the compact rule as the classification societies print them. */
    public static final Source DESIGN_RULE = new Source(
            "DNV-RP-B401 Cathodic protection design; ABS Guidance Notes on Cathodic Protection of Ships",
            "table of anode resistance formulas",
            Standing.PUBLISHED);

    /** Sphere, disc and mutual resistance. */
    public static final Source ELECTROSTATICS =
            new Source("textbook electrostatics by analogy of conductance", "", Standing.FROM_MEMORY);

    private WaterResistance() {}

    /** Slender anode on stand-offs, at least 0.30 m off the plate and at least four radii long (Dwight's long formula). */
    public static double longStandOff(double resistivity, double length, double radius) {
        return resistivity / (2 * Math.PI * length) * (Math.log(4 * length / radius) - 1);
    }

    /** Slender anode on stand-offs, shorter than four radii. The formula is from memory. */
    public static double shortStandOff(double resistivity, double length, double radius) {
        double h = radius / (2 * length);
        double s = Math.sqrt(1 + h * h);
        return resistivity / (2 * Math.PI * length) * (Math.log(2 * length / radius * (1 + s)) + h - s);
    }

    /** Long plate flush on the hull, at least four times as long as wide: rho / (L + W). */
    public static double longFlush(double resistivity, double length, double width) {
        return resistivity / (length + width);
    }

    /** Any compact body, short flush anode or bracelet, by its exposed area: 0.315 rho / sqrt(A). */
    public static double compact(double resistivity, double areaM2) {
        return 0.315 * resistivity / Math.sqrt(areaM2);
    }

    /** Disc flush in an insulating wall: rho / 4a. */
    public static double disc(double resistivity, double radius) {
        return resistivity / (4 * radius);
    }

    /** Sphere in free water: rho / 4 pi a. */
    public static double sphere(double resistivity, double radius) {
        return resistivity / (4 * Math.PI * radius);
    }

    /** Half sphere at an insulating wall: rho / 2 pi a. */
    public static double halfSphere(double resistivity, double radius) {
        return resistivity / (2 * Math.PI * radius);
    }

    /** Share of the path of two bodies at an insulating wall, far apart against their sizes: rho / 2 pi d. */
    public static double mutual(double resistivity, double distance) {
        return resistivity / (2 * Math.PI * distance);
    }

    /** Water in a hose or pipe: rho L / (pi d^2 / 4). */
    public static double column(double resistivity, double length, double diameter) {
        return resistivity * length / (Math.PI * diameter * diameter / 4);
    }
}

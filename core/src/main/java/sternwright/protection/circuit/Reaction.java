package sternwright.protection.circuit;

/**
 * One electrode reaction of a polarisation curve: a Tafel line, with or without a diffusion limit.
 *
 * <p>x = i0 10^(s (E - e0) / slope), s = +1 anodic, -1 cathodic; the current density is x without a limit and x / (1 + x / limit) with one.
 *
 * @param kind anodic (metal dissolves) or cathodic (oxygen or hydrogen takes electrons)
 * @param e0V reference potential of the line, V against silver/silver chloride in seawater
 * @param i0APerM2 current density at {@code e0V} without the limit, A/m2 of bare metal, above zero
 * @param slopeVPerDecade Tafel slope, V per decade of current, above zero for both kinds
 * @param limitAPerM2 diffusion limit, A/m2, above zero; {@link #NO_LIMIT} for none
 */
public record Reaction(Kind kind, double e0V, double i0APerM2, double slopeVPerDecade, double limitAPerM2) {
    /** Stands for "no diffusion limit". */
    public static final double NO_LIMIT = Double.POSITIVE_INFINITY;

    /** Which way the reaction moves charge. */
    public enum Kind {
        /** Metal goes into solution; current leaves the metal. */
        ANODIC,
        /** Oxygen or hydrogen is reduced; current enters the metal. */
        CATHODIC
    }

    /** A line without a limit that dissolves metal. */
    public static Reaction anodic(double e0V, double i0APerM2, double slopeVPerDecade) {
        return new Reaction(Kind.ANODIC, e0V, i0APerM2, slopeVPerDecade, NO_LIMIT);
    }

    /** A line that takes current, with a diffusion limit or {@link #NO_LIMIT}. */
    public static Reaction cathodic(double e0V, double i0APerM2, double slopeVPerDecade, double limitAPerM2) {
        return new Reaction(Kind.CATHODIC, e0V, i0APerM2, slopeVPerDecade, limitAPerM2);
    }

    /** +1 for anodic, -1 for cathodic. */
    public int sign() {
        return kind == Kind.ANODIC ? 1 : -1;
    }

    /** The same line with its limit (and, far below the limit, nothing else) multiplied. */
    public Reaction withLimitTimes(double factor) {
        return new Reaction(kind, e0V, i0APerM2, slopeVPerDecade, limitAPerM2 * factor);
    }

    /**
     * Magnitude of the current density at an interface potential, A/m2; never negative.
     *
     * @param interfaceV potential of the metal against the water beside it, V
     */
    public double densityAPerM2(double interfaceV) {
        double x = i0APerM2 * Math.pow(10, sign() * (interfaceV - e0V) / slopeVPerDecade);
        return limitAPerM2 == NO_LIMIT ? x : limitAPerM2 / (1 + limitAPerM2 / x);
    }
}

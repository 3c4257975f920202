package sternwright.protection.anode;

import java.util.Locale;
import sternwright.finding.Source;
import sternwright.finding.Standing;

/** The published design method of cathodic protection: current from area, mass from current and time, current of an anode from its resistance. */
public final class AnodeDesign {
    /** Hours in a year as the design codes count them. */
    public static final double HOURS_A_YEAR = 8760;

    /** Where the method comes from. */
    public static final Source SOURCE = new Source(
            "DNV-RP-B401; ABS Guidance Notes on Cathodic Protection of Ships, Dec 2017",
            "M = I t 8760 / (u eps); I = dE / R",
            Standing.PUBLISHED);

    private AnodeDesign() {}

    /** Current demand, A. */
    public static double currentA(double areaM2, double densityAPerM2, double bareShare) {
        return areaM2 * densityAPerM2 * bareShare;
    }

    /**
     * Net anode mass for a mean current over a time, kg.
     *
     * @param meanCurrentA mean current, A
     * @param years time, years
     * @param utilisation share of the mass that may waste, 0 to 1
     * @param capacityAhPerKg capacity, Ah/kg
     */
    public static double netMassKg(double meanCurrentA, double years, double utilisation, double capacityAhPerKg) {
        if (!(utilisation > 0 && utilisation <= 1) || !(capacityAhPerKg > 0) || !(years >= 0) || !(meanCurrentA >= 0)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "anode mass of %s A over %s years at utilisation %s and %s Ah/kg: give currents and years of zero or more, "
                            + "utilisation above 0 to 1 and a capacity above 0",
                    meanCurrentA,
                    years,
                    utilisation,
                    capacityAhPerKg));
        }
        return meanCurrentA * years * HOURS_A_YEAR / (utilisation * capacityAhPerKg);
    }

    /** Time a mass lasts at a current, years. */
    public static double lifeYears(double massKg, double utilisation, double capacityAhPerKg, double currentA) {
        return massKg * utilisation * capacityAhPerKg / (currentA * HOURS_A_YEAR);
    }

    /** Current an anode can give, A: driving voltage over its resistance to the water. */
    public static double anodeCurrentA(double protectionV, double anodeV, double resistanceOhm) {
        return (protectionV - anodeV) / resistanceOhm;
    }

    /** Number of anodes that a demand needs, by mass or by current. */
    public static int count(double needed, double each) {
        return (int) Math.ceil(needed / each - 1e-9);
    }
}

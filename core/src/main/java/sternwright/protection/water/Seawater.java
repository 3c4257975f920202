package sternwright.protection.water;

/**
 * Practical Salinity Scale 1978 and the conductivity of sea and brackish water.
 *
 * <p>Source: UNESCO technical papers in marine science 44 (Fofonoff and Millard 1983); below salinity 2 the extension of Hill, Dauphinee
 * and Woods (IEEE Journal of Oceanic Engineering OE-11, 1986), which joins the scale without a step. Temperatures are those of the scale
 * (IPTS-68); the difference to today's is below 0.01 K and does not matter here.
 */
public final class Seawater {
    /** Conductivity of water of salinity 35 at 15 degrees and surface pressure, mS/cm (Culkin and Smith 1980). */
    public static final double CONDUCTIVITY_35_15_MS_PER_CM = 42.914;

    /** Highest salinity of the scale. */
    public static final double HIGHEST_SALINITY = 42;

    private static final double[] A = {0.0080, -0.1692, 25.3851, 14.0941, -7.0261, 2.7081};
    private static final double[] B = {0.0005, -0.0056, -0.0066, -0.0375, 0.0636, -0.0144};
    private static final double[] C = {0.6766097, 2.00564e-2, 1.104259e-4, -6.9698e-7, 1.0031e-9};
    private static final double K = 0.0162;

    private Seawater() {}

    /**
     * Practical salinity from a conductivity ratio.
     *
     * @param conductivityRatio conductivity over that of salinity 35 at 15 degrees, surface
     * @param temperatureC -2 to 40
     * @param pressureDbar above atmospheric, 0 to 10,000
     * @return salinity, 0 to 42
     */
    public static double salinity(double conductivityRatio, double temperatureC, double pressureDbar) {
        double t = temperatureC;
        double p = pressureDbar;
        double pressureTerm = p * (2.070e-5 + p * (-6.370e-10 + p * 3.989e-15));
        double ratioTerm = 1 + t * (3.426e-2 + t * 4.464e-4) + (4.215e-1 - 3.107e-3 * t) * conductivityRatio;
        double rt = conductivityRatio / (1 + pressureTerm / ratioTerm) / standardRatio(t);
        return salinityAt(rt, t);
    }

    /** Conductivity of salinity 35 at a temperature over that at 15 degrees. */
    private static double standardRatio(double t) {
        return C[0] + t * (C[1] + t * (C[2] + t * (C[3] + t * C[4])));
    }

    private static double salinityAt(double rt, double t) {
        double root = Math.sqrt(Math.max(0, rt));
        double weight = (t - 15) / (1 + K * (t - 15));
        double plain = 0;
        double warm = 0;
        for (int i = 5; i >= 0; i--) {
            plain = plain * root + A[i];
            warm = warm * root + B[i];
        }
        double s = plain + weight * warm;
        if (s >= 2) {
            return s;
        }
        double x = 400 * rt;
        double y = 100 * rt;
        double rootY = Math.sqrt(y);
        return s - A[0] / (1 + 1.5 * x + x * x) - B[0] * weight / (1 + rootY + y + y * rootY);
    }

    /**
     * Conductivity at the surface, mS/cm.
     *
     * @param salinity practical salinity, 0 to 42
     * @param temperatureC -2 to 40
     */
    public static double conductivityMSPerCm(double salinity, double temperatureC) {
        if (!(salinity >= 0 && salinity <= HIGHEST_SALINITY)) {
            throw new IllegalArgumentException(
                    "salinity " + salinity + " is outside the scale: give 0 (fresh) to 42; the open sea has about 35");
        }
        if (!(temperatureC >= -2 && temperatureC <= 40)) {
            throw new IllegalArgumentException(
                    "water temperature " + temperatureC + " °C: give -2 to 40 °C (were these °F?)");
        }
        double low = 0;
        double high = 1.5;
        for (int k = 0; k < 60; k++) {
            double middle = (low + high) / 2;
            if (salinityAt(middle, temperatureC) < salinity) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2 * standardRatio(temperatureC) * CONDUCTIVITY_35_15_MS_PER_CM;
    }

    /**
     * Resistivity at the surface, ohm m.
     *
     * @param salinity practical salinity, above 0 to 42
     * @param temperatureC -2 to 40
     */
    public static double resistivityOhmM(double salinity, double temperatureC) {
        return 10 / conductivityMSPerCm(salinity, temperatureC);
    }

    /**
     * Salinity of water of a measured resistivity: the practical one for sea and brackish water, an equivalent one for rivers and lakes, whose salts differ.
     *
     * @param resistivityOhmM ohm m
     * @param temperatureC temperature of the measurement, -2 to 40
     */
    public static double salinityOfResistivity(double resistivityOhmM, double temperatureC) {
        if (!(resistivityOhmM > 0)) {
            throw new IllegalArgumentException("resistivity " + resistivityOhmM
                    + " ohm m: give a number above 0; the sea has about 0.2, a river 10 to 100");
        }
        return Math.max(0, salinity(10 / resistivityOhmM / CONDUCTIVITY_35_15_MS_PER_CM, temperatureC, 0));
    }
}

package sternwright.protection.anode;

import sternwright.finding.Source;
import sternwright.finding.Standing;

/**
 * How much of a painted surface is bare: f = a + b t, never above one (DNV-RP-B401, section 6.4).
 *
 * @param a share bare when new
 * @param bPerYear share lost in a year
 */
public record CoatingBreakdown(double a, double bPerYear) {
    /** Where form and categories come from. */
    public static final Source SOURCE =
            new Source("DNV-RP-B401 Cathodic protection design", "6.4 and Table 10-4, 0 to 30 m", Standing.PUBLISHED);

    /** One primer coat from 20 micrometres. */
    public static final CoatingBreakdown CATEGORY_I = new CoatingBreakdown(0.10, 0.10);
    /** Marine paint from 250 micrometres. */
    public static final CoatingBreakdown CATEGORY_II = new CoatingBreakdown(0.05, 0.025);
    /** Two or more coats, from 350 micrometres (thickness from memory). */
    public static final CoatingBreakdown CATEGORY_III = new CoatingBreakdown(0.02, 0.012);

    /** Bare share at an age in years. */
    public double at(double years) {
        return Math.min(1, a + bPerYear * years);
    }

    /** Mean bare share from new to an age in years; where the paint is gone before, 1 - (1 - a)^2 / (2 b t). */
    public double mean(double years) {
        if (a + bPerYear * years <= 1) {
            return a + bPerYear * years / 2;
        }
        return 1 - (1 - a) * (1 - a) / (2 * bPerYear * years);
    }
}

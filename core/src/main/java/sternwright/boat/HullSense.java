package sternwright.boat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import sternwright.finding.Source;
import sternwright.finding.Standing;

/**
 * Whether the figures of a hull can be true of one boat. A slip in length, beam, draught or mass sends a boat to the wrong hoist.
 *
 * <p>A floating body displaces its own mass of water (Archimedes), and what is displaced lies within the box length × beam ×
 * draught: more mass than the box holds cannot float. Everything else is a usual range, common practice without a source, and
 * only said.
 */
public final class HullSense {
    /** Mass of sea water, kg/m³: 1025 at 35 psu and 15 °C, as usual in naval architecture. */
    public static final double SEA_WATER_KG_PER_M3 = 1025;

    private static final double LIGHTEST_KG_PER_M3 = 1.2;
    private static final double HEAVIEST_KG_PER_M3 = 25;
    private static final double NARROWEST = 0.1;
    private static final double WIDEST = 0.65;
    private static final double SHALLOWEST = 0.015;
    private static final double DEEPEST = 0.35;
    private static final Source FLOATS = new Source("Archimedes' principle", "", Standing.PUBLISHED);
    private static final Source USUAL = new Source("service practice", "", Standing.COMMON_PRACTICE);

    /**
     * One figure that does not go with the others.
     *
     * @param field length-m, beam-m, draught-m or mass-kg, as in a boat's file
     * @param impossible true if it cannot be, false if it is only unusual
     * @param found what it is, as a phrase
     * @param expected the range, as a phrase
     * @param source what the range rests on
     */
    public record Odd(String field, boolean impossible, String found, String expected, Source source) {}

    private HullSense() {}

    /**
     * Looks at the figures of a hull together.
     *
     * @param hull the hull
     * @return what is odd; empty if nothing is
     */
    public static List<Odd> of(Hull hull) {
        List<Odd> odd = new ArrayList<>();
        double length = hull.lengthM();
        if (hull.beamM() > length) {
            odd.add(new Odd(
                    "beam-m",
                    true,
                    metres(hull.beamM()) + " of beam on " + metres(length) + " of length",
                    "a beam no larger than the length",
                    USUAL));
        } else {
            usual(odd, "beam-m", "beam", hull.beamM(), NARROWEST * length, WIDEST * length, length);
        }
        usual(odd, "draught-m", "draught", hull.draughtM(), SHALLOWEST * length, DEEPEST * length, length);
        mass(hull, odd);
        return odd;
    }

    private static void usual(
            List<Odd> odd, String field, String what, double is, double low, double high, double lengthM) {
        if (is < low || is > high) {
            odd.add(new Odd(
                    field,
                    false,
                    metres(is) + " of " + what + " is unusual for " + metres(lengthM) + " of length",
                    "usually " + metres(low) + " to " + metres(high),
                    USUAL));
        }
    }

    private static void mass(Hull hull, List<Odd> odd) {
        double cube = Math.pow(hull.lengthM(), 3);
        double low = LIGHTEST_KG_PER_M3 * cube;
        double high = HEAVIEST_KG_PER_M3 * cube;
        double most = SEA_WATER_KG_PER_M3 * hull.lengthM() * hull.beamM() * hull.draughtM();
        if (hull.massKg() > most) {
            odd.add(new Odd(
                    "mass-kg",
                    true,
                    kilograms(hull.massKg()) + " is more than a boat of this length, beam and draught can float",
                    "at most " + kilograms(most) + ", the sea water in length × beam × draught",
                    FLOATS));
        } else if (hull.massKg() < low || hull.massKg() > high) {
            odd.add(new Odd(
                    "mass-kg",
                    false,
                    kilograms(hull.massKg()) + " is unusual for " + metres(hull.lengthM()) + " of length",
                    "usually " + kilograms(low) + " to " + kilograms(high),
                    USUAL));
        }
    }

    private static String metres(double m) {
        return String.format(Locale.ROOT, m < 1 ? "%.2f m" : "%.1f m", m);
    }

    private static String kilograms(double kg) {
        double step = kg >= 1000 ? 100 : kg >= 100 ? 10 : 1;
        return String.format(Locale.ROOT, "%.0f kg", Math.rint(kg / step) * step);
    }
}

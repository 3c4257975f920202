package sternwright.protection.register;

import java.time.Month;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import sternwright.boat.Berth;
import sternwright.boat.Water;
import sternwright.finding.Source;
import sternwright.finding.Standing;
import sternwright.protection.water.Seawater;

/**
 * The water of a berth in one month.
 *
 * @param salinity practical salinity, or its equivalent for a river
 * @param temperatureC water temperature
 * @param resistivityOhmM resistivity at that temperature
 */
public record BerthWater(double salinity, double temperatureC, double resistivityOhmM) {
    /** Fresh below this practical salinity (rivers, lakes; limnetic to lower oligohaline). */
    private static final double FRESH_BELOW = 1;

    private static final Source TEMPERATURE = new Source(
            "no temperature of the berth is known; 15 °C is a middle figure for temperate waters",
            "",
            Standing.FROM_MEMORY);

    /** Whether criteria and curves of fresh water hold. */
    public boolean fresh() {
        return salinity < FRESH_BELOW;
    }

    /** What the water is called. */
    public String words() {
        return fresh() ? "fresh water" : salinity < 18 ? "brackish water" : "seawater";
    }

    /**
     * The water from January to December.
     *
     * @param berth the berth
     * @param overrides the yard's own figures
     */
    public static List<BerthWater> year(Berth berth, Map<String, Double> overrides) {
        AssumedFigures figures = new AssumedFigures(overrides);
        return Arrays.stream(Month.values()).map(m -> of(berth, m, figures)).toList();
    }

    static BerthWater of(Berth berth, Month month, AssumedFigures figures) {
        Water water = berth.water();
        Double known = water.temperatureC().size() == 12 ? water.temperatureC().get(month.getValue() - 1) : null;
        double t = figures.value("water.temperature-c", "water temperature", known, 15, "°C", TEMPERATURE);
        double salinity = salinity(berth, water);
        double rho = figures.value(
                "water.resistivity-ohm-m",
                "resistivity of the water",
                Seawater.resistivityOhmM(salinity, t),
                0,
                "ohm m",
                TEMPERATURE);
        return new BerthWater(Seawater.salinityOfResistivity(rho, t), t, rho);
    }

    private static double salinity(Berth berth, Water water) {
        Double measured = water.resistivityOhmM();
        if (measured != null) {
            return Math.max(1e-3, Seawater.salinityOfResistivity(measured, 25));
        }
        @Nullable Double salinity = water.salinityPsu();
        if (salinity == null) {
            throw new IllegalArgumentException(
                    "berth \"" + berth.id()
                            + "\" says neither salinity nor resistivity of its water, so no current can be computed. "
                            + "Write one of them into berths.yaml: the open sea has salinity 35, a river resistivity 10 to 100 ohm m.");
        }
        if (salinity <= 0) {
            return 1e-3;
        }
        return salinity;
    }
}

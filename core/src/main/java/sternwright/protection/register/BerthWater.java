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

    private static final double LEAST_SALINITY = 1e-3;
    private static final double OPEN_SEA = 35;

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
        List<BerthWater> year =
                Arrays.stream(Month.values()).map(m -> of(berth, m, figures)).toList();
        figures.requireSound(false);
        return year;
    }

    static BerthWater of(Berth berth, Month month, AssumedFigures figures) {
        Water water = berth.water();
        Double known = water.temperatureC().size() == 12 ? water.temperatureC().get(month.getValue() - 1) : null;
        double t = figures.value("water.temperature-c", "water temperature", known, 15, "°C", TEMPERATURE);
        double salinity = salinity(berth, water, figures);
        double rho = figures.value(
                "water.resistivity-ohm-m",
                "resistivity of the water",
                Seawater.resistivityOhmM(salinity, t),
                0,
                "ohm m",
                TEMPERATURE);
        return new BerthWater(Seawater.salinityOfResistivity(rho, t), t, rho);
    }

    private static double salinity(Berth berth, Water water, AssumedFigures figures) {
        Double measured = water.resistivityOhmM();
        if (measured != null) {
            return Math.max(LEAST_SALINITY, Seawater.salinityOfResistivity(measured, 25));
        }
        @Nullable Double salinity = water.salinityPsu();
        if (salinity == null) {
            figures.refuse(new RegisterProblem(
                    RegisterProblem.About.BERTH,
                    berth.id(),
                    "it says neither salinity nor resistivity of its water, so no current can be computed",
                    "one of them",
                    "The open sea has salinity 35, a river a resistivity of 10 to 100 ohm m."));
            return OPEN_SEA;
        }
        return Math.max(LEAST_SALINITY, salinity);
    }
}

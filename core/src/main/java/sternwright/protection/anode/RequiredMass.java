package sternwright.protection.anode;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import sternwright.protection.metal.AnodeAlloy;
import sternwright.protection.register.BoatBody;

/**
 * Mass that an anode would need to last a wanted time, by the published design method.
 *
 * @param body the anode
 * @param meanCurrentA mean current that a new one of the fitted kind and mass gives over the year, at the berth, under way and ashore, A
 * @param years wanted time to half gone, years
 * @param massKg new mass needed
 * @param words the formula with its figures
 */
public record RequiredMass(BoatBody body, double meanCurrentA, double years, double massKg, String words) {
    /** Renewed when half gone. */
    private static final double HALF = 0.5;

    /**
     * Computes the mass for an anode that is renewed when half gone, worn or not: what counts is how fast a new one goes.
     *
     * @param body the anode
     * @param newLastsMonths months that a new one of the fitted mass lasts to half gone; null where it loses next to nothing
     * @param years wanted time
     * @param temperatureC water temperature
     */
    public static RequiredMass of(BoatBody body, @Nullable Double newLastsMonths, double years, double temperatureC) {
        AnodeAlloy alloy = body.metal().alloy();
        Double fitted = body.massKg();
        if (alloy == null || fitted == null) {
            throw new IllegalArgumentException(body.id() + " is no anode: only an anode has a mass to be chosen");
        }
        double capacity = alloy.capacityAhPerKg(temperatureC);
        double current = newLastsMonths == null
                ? 0
                : HALF * fitted * capacity / (newLastsMonths / 12 * AnodeDesign.HOURS_A_YEAR);
        double mass = AnodeDesign.netMassKg(current, years, HALF, capacity);
        String words = String.format(
                Locale.ROOT,
                "M = I t 8760 / (u eps) = %.4f A x %.2f a x 8760 h/a / (0.5 x %.0f Ah/kg) = %.2f kg, fitted %.2f kg",
                current,
                years,
                capacity,
                mass,
                fitted);
        return new RequiredMass(body, current, years, mass, words);
    }
}

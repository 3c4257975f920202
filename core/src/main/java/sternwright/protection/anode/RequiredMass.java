package sternwright.protection.anode;

import java.util.Locale;
import sternwright.protection.metal.AnodeAlloy;
import sternwright.protection.register.BoatBody;

/**
 * Mass that an anode would need to last a wanted time, by the published design method, beside the pocket formula.
 *
 * @param body the anode
 * @param meanCurrentA mean current it gives
 * @param years wanted time to half gone, years
 * @param massKg new mass needed
 * @param words the formula with its figures
 */
public record RequiredMass(BoatBody body, double meanCurrentA, double years, double massKg, String words) {
    /**
     * Computes the mass for an anode that is renewed when half gone.
     *
     * @param body the anode
     * @param meanCurrentA its mean current
     * @param years wanted time
     * @param temperatureC water temperature
     */
    public static RequiredMass of(BoatBody body, double meanCurrentA, double years, double temperatureC) {
        AnodeAlloy alloy = body.metal().alloy();
        if (alloy == null) {
            throw new IllegalArgumentException(body.id() + " is no anode: only an anode has a mass to be chosen");
        }
        double capacity = alloy.capacityAhPerKg(temperatureC);
        double mass = AnodeDesign.netMassKg(Math.max(0, meanCurrentA), years, 0.5, capacity);
        String words = String.format(
                Locale.ROOT,
                "M = I t 8760 / (u eps) = %.3f A x %.2f a x 8760 / (0.5 x %.0f Ah/kg) = %.2f kg",
                meanCurrentA,
                years,
                capacity,
                mass);
        return new RequiredMass(body, meanCurrentA, years, mass, words);
    }
}

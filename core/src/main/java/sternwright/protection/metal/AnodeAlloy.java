package sternwright.protection.metal;

import sternwright.finding.Source;

/**
 * What an anode alloy gives.
 *
 * @param capacityAhPerKg practical electrochemical capacity in seawater up to 20 °C, Ah/kg
 * @param warmLossAhPerKgK capacity lost for each kelvin above 20 °C, Ah/kg
 * @param theoreticalAhPerKg capacity by Faraday's law, Ah/kg: what the dissolving current can at most last
 * @param closedCircuitV potential while it gives current, V against silver/silver chloride in seawater
 * @param densityKgPerM3 density
 * @param source of capacity and potential
 */
public record AnodeAlloy(
        double capacityAhPerKg,
        double warmLossAhPerKgK,
        double theoreticalAhPerKg,
        double closedCircuitV,
        double densityKgPerM3,
        Source source) {
    /** Capacity at a water temperature, Ah/kg. */
    public double capacityAhPerKg(double temperatureC) {
        return capacityAhPerKg - warmLossAhPerKgK * Math.max(0, temperatureC - 20);
    }
}

package sternwright.protection.anode;

import java.util.List;
import java.util.Map;
import sternwright.protection.register.BoatCircuit;

/**
 * What the wastage of a boat's anodes is computed from.
 *
 * @param atBerth circuit at the berth in some month; gives the shore lead, the curves at rest
 * @param underWay circuit under way in the same month
 * @param resistivityOhmM resistivity of the water from January to December over that of the circuits' month
 * @param temperatureC water temperature from January to December
 * @param year running hours and months afloat
 * @param startMonth month of the first step, 1 to 12
 * @param coatingYears age of the paint at the start, years; renewed where {@code repaintEveryYears} says
 * @param repaintEveryYears the paint is made good so often, years; infinite for never
 * @param breakdown loss of paint
 * @param remaining share of the mass left at the start, by body; full where none is given
 * @param demand factor on every oxygen limit on board, 1 until calibrated
 * @param loss factor on the mass lost for what demand does not explain, 1 until calibrated
 */
public record WastageProblem(
        BoatCircuit atBerth,
        BoatCircuit underWay,
        List<Double> resistivityOhmM,
        List<Double> temperatureC,
        BoatYear year,
        int startMonth,
        double coatingYears,
        double repaintEveryYears,
        CoatingBreakdown breakdown,
        Map<String, Double> remaining,
        double demand,
        double loss) {
    public WastageProblem {
        resistivityOhmM = List.copyOf(resistivityOhmM);
        temperatureC = List.copyOf(temperatureC);
        remaining = Map.copyOf(remaining);
    }

    /** The same boat with another demand. */
    public WastageProblem withDemand(double factor) {
        return with(factor, loss);
    }

    /** The same boat with another demand and another loss. */
    public WastageProblem with(double demandFactor, double lossFactor) {
        return new WastageProblem(
                atBerth,
                underWay,
                resistivityOhmM,
                temperatureC,
                year,
                startMonth,
                coatingYears,
                repaintEveryYears,
                breakdown,
                remaining,
                demandFactor,
                lossFactor);
    }

    /** The same boat from another start. */
    public WastageProblem from(int month, Map<String, Double> left) {
        return new WastageProblem(
                atBerth,
                underWay,
                resistivityOhmM,
                temperatureC,
                year,
                month,
                coatingYears,
                repaintEveryYears,
                breakdown,
                left,
                demand,
                loss);
    }
}

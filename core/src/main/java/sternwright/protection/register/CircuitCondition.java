package sternwright.protection.register;

import java.time.Month;
import java.util.Map;

/**
 * The state of boat and water that a circuit is built for.
 *
 * @param month tells the water's temperature
 * @param running under way: more oxygen at every metal, shore lead unplugged
 * @param shoreLead whether the shore lead is plugged in, where the berth has one
 * @param coatingYears age of the paint below the water, years
 * @param overrides the yard's own figures by key, see {@link Assumption}
 */
public record CircuitCondition(
        Month month, boolean running, boolean shoreLead, double coatingYears, Map<String, Double> overrides) {
    public CircuitCondition {
        overrides = Map.copyOf(overrides);
    }

    /** At the berth in a month, plugged in where there is shore power, paint a year old. */
    public static CircuitCondition atBerth(Month month) {
        return new CircuitCondition(month, false, true, 1, Map.of());
    }

    /** The same boat under way. */
    public CircuitCondition underWay() {
        return new CircuitCondition(month, true, false, coatingYears, overrides);
    }

    /** The same with the shore lead plugged or not. */
    public CircuitCondition withShoreLead(boolean plugged) {
        return new CircuitCondition(month, running, plugged, coatingYears, overrides);
    }

    /** The same in another month. */
    public CircuitCondition in(Month other) {
        return new CircuitCondition(other, running, shoreLead, coatingYears, overrides);
    }

    /** The same with the yard's own figures. */
    public CircuitCondition with(Map<String, Double> figures) {
        return new CircuitCondition(month, running, shoreLead, coatingYears, figures);
    }

    /** The same with paint of another age. */
    public CircuitCondition painted(double years) {
        return new CircuitCondition(month, running, shoreLead, years, overrides);
    }
}

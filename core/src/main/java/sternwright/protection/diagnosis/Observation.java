package sternwright.protection.diagnosis;

/**
 * A measured value.
 *
 * @param measurement what was measured
 * @param value the value in the quantity's unit
 * @param error standard deviation of the reading: in the unit for voltages, in decades for resistances, in natural logarithms for ratios
 */
public record Observation(Measurement measurement, double value, double error) {
    public Observation {
        if (!Double.isFinite(value) || !(error > 0)) {
            throw new IllegalArgumentException(measurement.words() + ": value " + value + " with an uncertainty of "
                    + error + "; give a number and an uncertainty above zero");
        }
        boolean volts =
                measurement.quantity() == Quantity.POTENTIAL_CLOSE || measurement.quantity() == Quantity.POTENTIAL_FAR;
        if (volts && Math.abs(value) > 3) {
            throw new IllegalArgumentException(measurement.words() + ": " + value
                    + " V is no potential of a metal in water; were these millivolts?");
        }
        if (measurement.quantity() == Quantity.JOINT_OHM && value < 0) {
            throw new IllegalArgumentException(measurement.words() + ": " + value
                    + " ohm is negative: the couple's own voltage sits in the circuit; measure disconnected or ashore");
        }
    }

    /** A value with the uncertainty usual for its kind. */
    public static Observation of(Measurement measurement, double value) {
        return new Observation(measurement, value, measurement.quantity().usualError());
    }
}

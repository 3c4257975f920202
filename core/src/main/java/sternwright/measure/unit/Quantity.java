package sternwright.measure.unit;

/** What is measured in the workshop. */
public enum Quantity {
    /** How warm. */
    TEMPERATURE,
    /** How much warmer. */
    TEMPERATURE_RISE,
    /** How much liquid. */
    VOLUME,
    /** Pressure. */
    PRESSURE,
    /** Clearance, play, travel. */
    LENGTH,
    /** Tightening torque. */
    TORQUE,
    /** Power of an engine. */
    POWER,
    /** Mass of an anode. */
    MASS,
    /** Voltage. */
    VOLTAGE,
    /** Resistance. */
    RESISTANCE
}

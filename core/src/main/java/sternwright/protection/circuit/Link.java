package sternwright.protection.circuit;

/** What joins (or should join, or should not join) two bodies in metal. Current from {@link #a} to {@link #b} is positive. */
public sealed interface Link {
    /** Short name, unique in its circuit. */
    String id();

    /** Body at one end. */
    String a();

    /** Body at the other end. */
    String b();

    /** Whether current can pass. */
    default boolean conducts() {
        return true;
    }

    /**
     * A joint, strap, wire or shaft: current is the voltage across it over its resistance.
     *
     * @param ohm resistance, zero or more; below a micro-ohm the two bodies are solved as one
     */
    record Resistor(String id, String a, String b, double ohm) implements Link {}

    /** A joint that is open: kept in the circuit so that a fault can be told from a wire never fitted. */
    record OpenJoint(String id, String a, String b) implements Link {
        @Override
        public boolean conducts() {
            return false;
        }
    }

    /**
     * A galvanic isolator: strings of diodes both ways, i = 2 Is sinh((Va - Vb - i Rs) / (n k Vt)). A direct-current model: alternating
     * leakage that pushes the diodes over every half cycle is outside it.
     *
     * @param seriesOhm resistance of the lead in series, ohm, zero or more
     * @param saturationA saturation current Is, A, above zero
     * @param emissionFactor n, usually 1 to 2
     * @param diodesInSeries k, each way
     * @param thermalVoltageV Vt, V
     */
    record Isolator(
            String id,
            String a,
            String b,
            double seriesOhm,
            double saturationA,
            double emissionFactor,
            int diodesInSeries,
            double thermalVoltageV)
            implements Link {
        /** n k Vt, V. */
        public double scaleV() {
            return emissionFactor * diodesInSeries * thermalVoltageV;
        }
    }
}

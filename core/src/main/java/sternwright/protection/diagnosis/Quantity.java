package sternwright.protection.diagnosis;

/** What can be measured. */
public enum Quantity {
    /** Potential with the half cell close to a part, V against silver/silver chloride in seawater. */
    POTENTIAL_CLOSE("potential of", "half cell close", "V", 10),
    /** Potential with the half cell some metres off, V. */
    POTENTIAL_FAR("potential of", "half cell well away", "V", 10),
    /** Voltage across a joint under working current, V. */
    JOINT_VOLTAGE("voltage across", "while it works", "V", 10),
    /** Resistance of a joint, ohm; ashore, or disconnected and with both polarities. */
    JOINT_OHM("resistance of", "ashore or disconnected, both polarities", "ohm", 15),
    /** Mass an anode lost over what a sound boat's would have lost. */
    WASTAGE_RATIO("weight of", "mass lost over mass expected", "", 20),
    /** Direct current in the shore lead's earth, A. */
    SHORE_CURRENT("direct current in", "clamp meter", "A", 10);

    private final String words;
    private final String how;
    private final String unit;
    private final int minutes;

    Quantity(String words, String how, String unit, int minutes) {
        this.words = words;
        this.how = how;
        this.unit = unit;
        this.minutes = minutes;
    }

    /** In words, before the name of a place: "potential of". */
    public String words() {
        return words;
    }

    /** How it is measured, in few words. */
    public String how() {
        return how;
    }

    /** Unit of the value. */
    public String unit() {
        return unit;
    }

    /** Minutes it takes; from memory. */
    public int minutes() {
        return minutes;
    }

    /** The value on the scale where its error is normal: logarithms of resistances and ratios, plain else. */
    double scaled(double value) {
        return switch (this) {
            case JOINT_OHM -> Math.log10(Math.max(1e-3, Math.min(1e5, value)));
            case WASTAGE_RATIO -> Math.log(Math.max(0.05, Math.min(20, value)));
            case SHORE_CURRENT -> Math.copySign(Math.log1p(Math.abs(value) / 0.02), value);
            default -> value;
        };
    }

    /** Usual standard deviation on that scale of the reading itself. */
    double usualError() {
        return switch (this) {
            case POTENTIAL_CLOSE, POTENTIAL_FAR -> 0.010;
            case JOINT_VOLTAGE -> 0.003;
            case JOINT_OHM -> 0.15;
            case WASTAGE_RATIO -> 0.15;
            case SHORE_CURRENT -> 0.3;
        };
    }

    /** What the model adds to it on that scale, independently for each reading. */
    double modelError() {
        return switch (this) {
            case POTENTIAL_CLOSE, POTENTIAL_FAR -> 0.015;
            case JOINT_VOLTAGE -> 0.003;
            case JOINT_OHM -> 0.3;
            case WASTAGE_RATIO -> 0.2;
            case SHORE_CURRENT -> 0.3;
        };
    }

    /** How far "something else" may throw a reading on that scale. */
    double anywhere() {
        return switch (this) {
            case POTENTIAL_CLOSE, POTENTIAL_FAR -> 0.35;
            case JOINT_VOLTAGE -> 0.2;
            case JOINT_OHM -> 3;
            case WASTAGE_RATIO -> 1.5;
            case SHORE_CURRENT -> 3;
        };
    }
}

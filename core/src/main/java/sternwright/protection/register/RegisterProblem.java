package sternwright.protection.register;

/**
 * One reason why no circuit can be built from what is known of a boat.
 *
 * @param about whose fault it is
 * @param where the berth, the part or the key of a figure
 * @param what what is wrong, a phrase
 * @param expected what was expected, a phrase; may be empty
 * @param advice what to do, a sentence; may be empty
 */
public record RegisterProblem(About about, String where, String what, String expected, String advice) {
    /** Whose fault it is. */
    public enum About {
        /** The berth. */
        BERTH,
        /** The boat's own entry. */
        BOAT,
        /** A figure put in place of an assumed one. */
        FIGURE
    }

    @Override
    public String toString() {
        return where + ": " + what + (expected.isEmpty() ? "" : "; expected " + expected) + "."
                + (advice.isEmpty() ? "" : " " + advice);
    }
}

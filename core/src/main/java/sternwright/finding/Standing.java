package sternwright.finding;

/** What a figure rests on. */
public enum Standing {
    /** The maker of the machine in hand says so. */
    MAKER("maker's figure"),
    /** The yard's own rule. */
    YARD("yard's own rule"),
    /** Published; the source names where. */
    PUBLISHED("published"),
    /** Common practice of the trade, no source. */
    COMMON_PRACTICE("common practice, no source"),
    /** From memory: check before relying on it. */
    FROM_MEMORY("from memory, to be checked");

    private final String words;

    Standing(String words) {
        this.words = words;
    }

    /**
     * The standing in plain words.
     *
     * @return a short phrase
     */
    public String words() {
        return words;
    }
}

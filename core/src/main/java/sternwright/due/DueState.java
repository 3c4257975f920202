package sternwright.due;

/** How a work stands on the day asked for. */
public enum DueState {
    /** Past its last sensible date. */
    OVERDUE("overdue"),
    /** Due, or inside the window in which it is done. */
    DUE("due"),
    /** Not known when it was last done: due at the first visit. */
    UNKNOWN("history unknown"),
    /** Done at every visit. */
    EVERY_VISIT("every visit"),
    /** To come. */
    COMING("coming"),
    /** The owner signed that it is not to be done. */
    REFUSED("refused by owner");

    private final String words;

    DueState(String words) {
        this.words = words;
    }

    /**
     * The state in plain words.
     *
     * @return a short phrase
     */
    public String words() {
        return words;
    }
}

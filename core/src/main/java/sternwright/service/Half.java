package sternwright.service;

/** The half of the year a work belongs to. */
public enum Half {
    /** Autumn: before the winter. */
    LAY_UP("lay-up"),
    /** Spring: before launch or with it. */
    RECOMMISSION("recommission"),
    /** Any time. */
    ANY("any time");

    private final String words;

    Half(String words) {
        this.words = words;
    }

    /**
     * The half in plain words.
     *
     * @return a short phrase
     */
    public String words() {
        return words;
    }
}

package sternwright.service;

/** Where a work can be done. */
public enum Place {
    /** Only in the water. */
    AFLOAT("afloat"),
    /** Only out of the water. */
    ASHORE("ashore"),
    /** In the water or out of it. */
    EITHER("afloat or ashore");

    private final String words;

    Place(String words) {
        this.words = words;
    }

    /**
     * The place in plain words.
     *
     * @return a short phrase
     */
    public String words() {
        return words;
    }
}

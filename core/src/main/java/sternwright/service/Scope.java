package sternwright.service;

/** How far a rule's figure reaches; the narrower one leads. */
public enum Scope {
    /** The shipped generic programme. */
    GENERIC("generic programme"),
    /** The whole yard. */
    YARD("yard's own rule"),
    /** Every engine of one model. */
    ENGINE_MODEL("rule for this engine model"),
    /** One boat. */
    BOAT("rule for this boat"),
    /** One part of one boat. */
    PART("rule for this part");

    private final String words;

    Scope(String words) {
        this.words = words;
    }

    /**
     * The scope in plain words.
     *
     * @return a short phrase
     */
    public String words() {
        return words;
    }
}

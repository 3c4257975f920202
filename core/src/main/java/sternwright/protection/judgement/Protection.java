package sternwright.protection.judgement;

/** How a metal stands in its water. */
public enum Protection {
    /** Wastes. */
    UNDER("not protected"),
    /** Within its limits. */
    PROTECTED("protected"),
    /** Driven too far. */
    OVER("overprotected"),
    /** No criterion for it: an anode or a metal that needs none. */
    NOT_JUDGED("no criterion");

    private final String words;

    Protection(String words) {
        this.words = words;
    }

    /** The state in plain words. */
    public String words() {
        return words;
    }
}

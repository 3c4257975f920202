package sternwright.job;

/** The boxes of a work: exactly one is ticked on board. */
public enum CardAnswer {
    /** Done as ordered. */
    DONE("done"),
    /** Not done; the remark says why. */
    NOT_DONE("not done"),
    /** The owner or the owner's word refuses it; the signature goes beside it. */
    REFUSED("refused by owner");

    private final String words;

    CardAnswer(String words) {
        this.words = words;
    }

    /**
     * The answer in plain words.
     *
     * @return a short phrase
     */
    public String words() {
        return words;
    }
}

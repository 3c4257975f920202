package sternwright.app.command.text;

/** A number with the word for what is counted, one of it or several. */
public final class Counted {
    private Counted() {}

    /**
     * So many of something whose plural takes an s.
     *
     * @param many how many
     * @param one the word for one
     * @return such as 1 boat, 3 boats, 0 lines
     */
    public static String of(long many, String one) {
        return of(many, one, one + "s");
    }

    /**
     * So many of something.
     *
     * @param many how many
     * @param one the word for one
     * @param several the word for several and for none
     * @return such as 1 entry, 2 entries
     */
    public static String of(long many, String one, String several) {
        return many + " " + (many == 1 ? one : several);
    }
}

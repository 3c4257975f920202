package sternwright.app.web.page;

/** The chapters of the job book, in the order of its index. A chapter shows in the index once a page answers its address. */
public enum Section {
    /** Jobs of the day. */
    TODAY("/"),
    /** The boats. */
    BOATS("/boats"),
    /** What is due. */
    DUE("/due"),
    /** Planned visits. */
    VISITS("/visits"),
    /** The season's board. */
    SEASON("/season"),
    /** Metal under water. */
    PROTECTION("/protection"),
    /** Job cards. */
    CARDS("/cards"),
    /** Rates, people and the like. */
    SETTINGS("/settings"),
    /** Outside the index: signing in and the like. */
    NONE("");

    private final String path;

    Section(String path) {
        this.path = path;
    }

    /**
     * Where the chapter begins.
     *
     * @return a path, empty for what stands outside the index
     */
    public String path() {
        return path;
    }

    /**
     * Key of its name in the words.
     *
     * @return such as {@code desk.section.boats}
     */
    public String key() {
        return "desk.section." + name().toLowerCase(java.util.Locale.ROOT);
    }
}

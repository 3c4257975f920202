package sternwright.app.command.entry;

/** How a command ended, as the process says it. */
public final class ExitStatus {
    /** Done. */
    public static final int DONE = 0;
    /** The machine could not. */
    public static final int COULD_NOT = 1;
    /** What came in cannot be used. */
    public static final int BAD_INPUT = 2;

    private ExitStatus() {}
}

package sternwright.app.desk.derived;

/** What is asked for is not there yet, or so much waits to be made that one more would only wait; ask again. */
public final class Busy extends RuntimeException {
    private static final long serialVersionUID = 1;

    /** After so long it is worth asking again, in seconds. */
    public static final int AGAIN_S = 20;

    /**
     * What was asked for is being worked out.
     *
     * @param what what goes on
     */
    public Busy(String what) {
        super(what);
    }

    Busy(Throwable why) {
        super("too much waits to be made", why);
    }
}

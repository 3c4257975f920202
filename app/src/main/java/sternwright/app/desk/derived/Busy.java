package sternwright.app.desk.derived;

/** So much waits to be made already that one more would only wait; nothing was done. */
public final class Busy extends RuntimeException {
    private static final long serialVersionUID = 1;

    /** After so long it is worth asking again, in seconds. */
    public static final int AGAIN_S = 20;

    Busy(Throwable why) {
        super("too much waits to be made", why);
    }
}

package sternwright.app.store;

import java.io.IOException;

/** A store refused a deed; nothing of it was written. The message says what to do. */
public final class StoreRefused extends IOException {
    private static final long serialVersionUID = 1;

    private final boolean full;

    StoreRefused(String message, boolean full, Throwable cause) {
        super(message, cause);
        this.full = full;
    }

    /**
     * Whether there is no room left on the disk.
     *
     * @return false for every other reason
     */
    public boolean full() {
        return full;
    }

    /**
     * Whether a fault that came from any database of the program says that there is no room left.
     *
     * @param trouble the fault
     * @return true if so
     */
    public static boolean full(Throwable trouble) {
        return StoreTrouble.of("", trouble).full();
    }
}

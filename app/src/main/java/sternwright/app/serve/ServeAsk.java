package sternwright.app.serve;

import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How the pages are asked to be opened.
 *
 * @param folder the yard's folder
 * @param address address to listen on; 127.0.0.1 for this machine alone, 0.0.0.0 for the network
 * @param port port to listen on; 0 takes any that is free
 * @param names further names by which the machine is called
 * @param behindProxy whether a proxy in front says who asks and by which name
 * @param plainPort null for http; for https by the yard's own certificate authority the port where phones fetch its root by plain http,
 *     0 for any
 * @param today the day to take for today, null for the clock's
 */
public record ServeAsk(
        Path folder,
        String address,
        int port,
        List<String> names,
        boolean behindProxy,
        @Nullable Integer plainPort,
        @Nullable String today) {
    /** Copies the list. */
    public ServeAsk {
        names = List.copyOf(names);
    }

    /**
     * Pages by http.
     *
     * @param folder the yard's folder
     * @param address address to listen on
     * @param port port to listen on; 0 takes any that is free
     * @param names further names by which the machine is called
     * @param behindProxy whether a proxy in front says who asks and by which name
     * @param today the day to take for today, null for the clock's
     */
    public ServeAsk(
            Path folder, String address, int port, List<String> names, boolean behindProxy, @Nullable String today) {
        this(folder, address, port, names, behindProxy, null, today);
    }

    /**
     * Whether the pages have https of their own.
     *
     * @return false for http
     */
    public boolean https() {
        return plainPort != null;
    }

    /**
     * Whether only this machine can reach the pages.
     *
     * @return true on a loopback address without a proxy
     */
    public boolean thisMachineOnly() {
        return !behindProxy && (address.equals("localhost") || address.equals("::1") || address.startsWith("127."));
    }
}

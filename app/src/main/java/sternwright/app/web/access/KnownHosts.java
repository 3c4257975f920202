package sternwright.app.web.access;

import java.util.Locale;
import java.util.Set;

/**
 * The names this program answers to. A page that another site leads to under a name of its own is refused, so that nobody
 * reaches into a program that listens on this machine only.
 *
 * @param names lower case; empty answers to every name
 */
public record KnownHosts(Set<String> names) {
    /** Copies the set. */
    public KnownHosts {
        names = Set.copyOf(names);
    }

    /** Whether a request was meant for this program. */
    boolean knows(String host) {
        return names.isEmpty() || names.contains(host.toLowerCase(Locale.ROOT));
    }
}

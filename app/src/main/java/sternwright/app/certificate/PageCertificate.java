package sternwright.app.certificate;

import java.security.PrivateKey;
import java.security.cert.X509Certificate;
import java.time.Duration;
import java.time.Instant;
import java.util.Set;

/**
 * What the pages show to prove that they are the yard's.
 *
 * @param key its key, kept in memory alone
 * @param certificate the certificate
 * @param names names and addresses it is for
 */
public record PageCertificate(PrivateKey key, X509Certificate certificate, Set<String> names) {
    /** How long one is good. Well below the 825 days beyond which some phones refuse (from memory). */
    public static final Duration LIFE = Duration.ofDays(90);
    /** After so long another is made. */
    public static final Duration FRESH = Duration.ofDays(30);

    /** Copies the set. */
    public PageCertificate {
        names = Set.copyOf(names);
    }

    /**
     * Whether another should be made.
     *
     * @param now the time
     * @param wanted the names the pages answer to now
     * @return true if it grows old or the names have changed
     */
    public boolean stale(Instant now, Set<String> wanted) {
        Instant end = certificate.getNotAfter().toInstant();
        return now.isAfter(end.minus(LIFE).plus(FRESH)) || !names.equals(wanted);
    }

    @Override
    public String toString() {
        return "certificate for " + names;
    }
}

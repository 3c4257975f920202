package sternwright.app.web.access;

import java.time.LocalDate;

/** The https of the pages by the yard's own certificate authority, as far as pages tell of it. There only if it is on. */
public interface OwnHttps {
    /**
     * By what the root is known.
     *
     * @return SHA-256, pairs of hexadecimal figures with colons
     */
    String fingerprint();

    /**
     * The root as phones take it.
     *
     * @return DER
     */
    byte[] root();

    /**
     * Last day of the root.
     *
     * @return the day
     */
    LocalDate rootUntil();

    /**
     * Where a phone that does not trust the root yet fetches it.
     *
     * @return an address by http
     */
    String plainAddress();

    /**
     * Where the pages are.
     *
     * @return an address by https
     */
    String secureAddress();

    /**
     * Port of the pages.
     *
     * @return the port of https
     */
    int securePort();
}

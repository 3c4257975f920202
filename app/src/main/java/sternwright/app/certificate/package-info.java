/**
 * The yard's own certificate authority: a root that phones are told to trust, and the certificates it gives the pages.
 *
 * <p>In come a folder for the root and the names the pages answer to; out go keys and certificates (X.509, RFC 5280). The root
 * vouches for addresses of private networks and for the yard's own names alone, so that whoever stole its key could not pass for
 * any other site.
 */
@NullMarked
package sternwright.app.certificate;

import org.jspecify.annotations.NullMarked;

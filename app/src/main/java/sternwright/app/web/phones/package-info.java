/**
 * How a phone comes to trust the pages where they have https of their own: a page with a picture for its camera, and the page that
 * hands out the root certificate.
 *
 * <p>In comes what {@link sternwright.app.web.access.OwnHttps} knows; out go pages. The page for phones is open to everybody on
 * the network and tells nothing but the certificate, which is no secret.
 */
@NullMarked
package sternwright.app.web.phones;

import org.jspecify.annotations.NullMarked;

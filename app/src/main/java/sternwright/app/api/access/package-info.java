/**
 * Who may ask: a token in the header (RFC 6750), or in the address of a calendar. No cookie is read and none is set, so no other site
 * can make a browser ask in a person's name.
 */
@NullMarked
package sternwright.app.api.access;

import org.jspecify.annotations.NullMarked;

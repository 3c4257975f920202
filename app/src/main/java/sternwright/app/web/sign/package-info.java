/**
 * The pages in front of all others: signing in, the owner's account at the first start, and setting a password by a link
 * that works once.
 *
 * <p>In come names and passwords as typed; out goes a session, or the same page with what is wrong. Nothing here says whether
 * a name is known.
 */
@NullMarked
package sternwright.app.web.sign;

import org.jspecify.annotations.NullMarked;

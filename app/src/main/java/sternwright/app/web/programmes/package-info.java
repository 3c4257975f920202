/**
 * Service programmes: the rules, whose figure holds for a boat and where it comes from, and the yard's or makers' figures over them.
 *
 * <p>Everybody signed in reads; a manager gives a figure for the yard, an engine model, a boat or a part, sees what would move on the
 * due list, keeps it or takes it back. It is written into the yard's own programmes.
 */
@NullMarked
package sternwright.app.web.programmes;

import org.jspecify.annotations.NullMarked;

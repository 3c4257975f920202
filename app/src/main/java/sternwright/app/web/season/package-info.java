/**
 * The season on the wall: the board of the published plan, runs that make a better one while it is watched, visits set on another
 * day, what has happened since and what becomes of it, and the papers of it all.
 *
 * <p>In comes what a person asks; out go pages. What takes long is worked out behind the page, which asks again by itself.
 */
@NullMarked
package sternwright.app.web.season;

import org.jspecify.annotations.NullMarked;

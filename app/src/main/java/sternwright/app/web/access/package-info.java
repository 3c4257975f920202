/**
 * Who may open what: signing in, the slowing down of guesses, the first start, and the headers that tell a browser what a
 * page may do.
 *
 * <p>In come requests; out go requests of a known person, or a page that asks who it is. Each controller method says by
 * {@link sternwright.app.web.access.ForAll}, {@link sternwright.app.web.access.ForCrew},
 * {@link sternwright.app.web.access.ForOffice} or {@link sternwright.app.web.access.ForManager} who may call it; a test fails on one that says nothing.
 */
@NullMarked
package sternwright.app.web.access;

import org.jspecify.annotations.NullMarked;

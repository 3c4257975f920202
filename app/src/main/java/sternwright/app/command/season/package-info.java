/**
 * The command that lays out the season of a yard, changes it and publishes it.
 *
 * <p>Comes in: a horizon and happenings. Goes out: progress while it thinks, then the plan with what binds and its bound.
 */
@NullMarked
package sternwright.app.command.season;

import org.jspecify.annotations.NullMarked;

/**
 * The command that says what is due, and why.
 *
 * <p>Comes in: a boat or the yard, and a day. Goes out: a table, a sheet or JSON, the soonest first.
 */
@NullMarked
package sternwright.app.command.due;

import org.jspecify.annotations.NullMarked;

/**
 * The deeds of the desk on the command line.
 *
 * <p>Comes in: words typed. Goes out: text for people or JSON for programs, and an exit status: 0 done, 1 the machine could
 * not (disk, memory), 2 what came in cannot be used; nothing was written then. The clock is read here and nowhere else.
 */
@NullMarked
package sternwright.app.command;

import org.jspecify.annotations.NullMarked;

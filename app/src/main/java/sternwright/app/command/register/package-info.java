/**
 * Commands on the register: a new yard, a new boat, the list of boats, and the check of every file.
 *
 * <p>Comes in: words typed. Goes out: files of the yard, or what is wrong with them. The deeds are of the desk.
 */
@NullMarked
package sternwright.app.command.register;

import org.jspecify.annotations.NullMarked;

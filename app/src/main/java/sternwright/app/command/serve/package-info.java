/**
 * The command that opens the pages.
 *
 * <p>Comes in: the yard's folder, address and port. Goes out: the address to open, then nothing until the program is ended.
 */
@NullMarked
package sternwright.app.command.serve;

import org.jspecify.annotations.NullMarked;

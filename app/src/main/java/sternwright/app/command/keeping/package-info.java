/**
 * Backing up, restoring and verifying, as typed.
 *
 * <p>Comes in: words of the command line. Goes out: what was done, in lines.
 */
@NullMarked
package sternwright.app.command.keeping;

import org.jspecify.annotations.NullMarked;

/**
 * Starts the pages: puts the web server, the database of accounts and sessions, and the yard together, and says where they
 * can be opened.
 *
 * <p>In comes what was asked on the command line; out goes a running program until it is ended. Nothing here is loaded by any
 * other command.
 */
@NullMarked
package sternwright.app.serve;

import org.jspecify.annotations.NullMarked;

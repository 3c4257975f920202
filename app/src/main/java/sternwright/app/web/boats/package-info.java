/**
 * The boats of the yard: found by name, owner and berth.
 *
 * <p>In comes what to look for and by which column to sort; out goes a list, each boat with what is overdue and due.
 */
@NullMarked
package sternwright.app.web.boats;

import org.jspecify.annotations.NullMarked;

/**
 * A boat at one glance: each installation drawn, with what is due marked on the part, and the table behind it.
 *
 * <p>Comes in: the yard's files, the due list of one boat, a day. Goes out: pictures and rows that lead to each other by the part's
 * letter and by {@link sternwright.app.desk.boats.PartRow#anchor()}.
 */
@NullMarked
package sternwright.app.desk.boats;

import org.jspecify.annotations.NullMarked;

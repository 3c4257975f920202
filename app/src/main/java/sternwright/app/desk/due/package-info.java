/**
 * What is due on the boats of a yard.
 *
 * <p>Comes in: the files of the yard and a day. Goes out: works with dates and reasons. Whose arithmetic: {@code sternwright.due}.
 */
@NullMarked
package sternwright.app.desk.due;

import org.jspecify.annotations.NullMarked;

/**
 * One boat: her installations drawn with what is due on them, parts with their ages, engine hours, history, documents, and her file
 * as text.
 *
 * <p>In comes the boat's id and what was typed; out goes a page, or a deed of the desk and then a page. Whose arithmetic:
 * {@code sternwright.due}; whose drawings: {@code sternwright.app.paper.drawing}.
 */
@NullMarked
package sternwright.app.web.boat;

import org.jspecify.annotations.NullMarked;

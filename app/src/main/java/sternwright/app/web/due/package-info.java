/**
 * The due list of the yard: narrowed, sorted, with the reason and the source of every figure one click away.
 *
 * <p>In comes what to look for; out goes one stretch of the list, formatted for the reader. What is due is worked out by
 * {@code sternwright.due}.
 */
@NullMarked
package sternwright.app.web.due;

import org.jspecify.annotations.NullMarked;

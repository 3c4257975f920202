/**
 * What is derived from the whole of an open yard, worked out once and kept.
 *
 * <p>In comes a way to work something out from an open yard; out goes the answer, worked out again only when the yard or the day is
 * another one.
 */
@NullMarked
package sternwright.app.desk.derived;

import org.jspecify.annotations.NullMarked;

/**
 * Proves a plan of visits from the words of the problem, without a line of the planner's code.
 *
 * <p>In: a problem and a plan. Out: every rule broken and every amount that does not add up, in words; an empty list is a
 * sound plan. Whether a cheaper plan exists is not judged here.
 */
@NullMarked
package sternwright.visit.check;

import org.jspecify.annotations.NullMarked;

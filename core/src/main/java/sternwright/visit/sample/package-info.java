/**
 * Generated boats and the habits a plan is measured against: each work at its own due date, and fixed visits in October and
 * April.
 *
 * <p>In: a seed, or a problem. Out: a problem; a habit's problem leaves nothing to decide but places, so that its cost is what
 * the habit costs, priced in its favour. Every figure of a generated boat is invented.
 */
@NullMarked
package sternwright.visit.sample;

import org.jspecify.annotations.NullMarked;

/**
 * Visits of one boat: planned, shown and put on paper.
 *
 * <p>Comes in: a boat, a horizon, changes to try. Goes out: the plan with its proof, job cards and estimates. Whose model:
 * {@code sternwright.visits}.
 */
@NullMarked
package sternwright.app.desk.visits;

import org.jspecify.annotations.NullMarked;

/**
 * A season as one constraint model for an exact solver (CP-SAT of OR-Tools).
 *
 * <p>In comes a season, perhaps with a plan as hint; out come starts, or the proof that there is no plan. It is used where proof is in
 * reach: on the few visits that clash. As a model of a whole season it is the peer that the search is measured against.
 */
@NullMarked
package sternwright.season.exact;

import org.jspecify.annotations.NullMarked;

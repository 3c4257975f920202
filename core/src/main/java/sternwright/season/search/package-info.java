/**
 * Finds plans: a list schedule at once, then ruin and recreate for as long as it may.
 *
 * <p>In come the arrays of a season, a seed and a {@link sternwright.season.search.Budget}; out comes a
 * {@link sternwright.season.SeasonPlan}. A half of a visit is taken out and put back as a whole, at the starts of least
 * marginal cost found by dynamic programming along its lags; worse plans are accepted as in annealing (S. Kirkpatrick,
 * C. D. Gelatt, M. P. Vecchi, Science 220, 1983, 671-680; ruin and recreate: G. Schrimpf and others, J. Comput. Phys. 159,
 * 2000, 139-171). Two threads search two sides of the season that share no week.
 */
@NullMarked
package sternwright.season.search;

import org.jspecify.annotations.NullMarked;

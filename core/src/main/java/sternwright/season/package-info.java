/**
 * One yard's season: every operation of every visit on a day, with hoist, hard standing and people.
 *
 * <p>In comes a {@link sternwright.season.SeasonProblem}: plain integers and names on an axis of working quarter-days. Out comes
 * a {@link sternwright.season.SeasonPlan}: one start per operation, the cost split by what it is paid for, and a lower bound.
 * The planners live in the sub-packages: {@code search} (list schedule, ruin and recreate), {@code bound} (how near the best),
 * {@code replan} (after a disturbance), {@code relief} (what binds, what clashes), {@code project} (the general project
 * scheduling core), {@code check} (the independent judge), {@code sample} (invented seasons).
 *
 * <p>Model: multi-skill project scheduling with generalised precedence (minimum and maximum lags), nested limits for hoists and
 * places, and people by skill subsets (P. Hall, 'On representatives of subsets', J. London Math. Soc. 10, 1935, 26-30).
 */
@NullMarked
package sternwright.season;

import org.jspecify.annotations.NullMarked;

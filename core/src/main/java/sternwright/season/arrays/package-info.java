/**
 * A season as plain arrays, for the planners' inner loops.
 *
 * <p>In comes a {@link sternwright.season.SeasonProblem}; out come {@link sternwright.season.arrays.SeasonArrays} (one entry per
 * operation), the {@link sternwright.season.arrays.Limits} of people, hoists, places and pools, and a
 * {@link sternwright.season.arrays.Timetable} that adds and removes operations and keeps the cost current.
 *
 * <p>Limits stand for every set S of kinds of work: what is in progress of the kinds in S may not exceed what the suppliers that
 * can do any kind in S give (P. Hall, 'On representatives of subsets', J. London Math. Soc. 10, 1935, 26-30: then and only
 * then a matching exists). Extra hands of a week are added to every one of these limits.
 */
@NullMarked
package sternwright.season.arrays;

import org.jspecify.annotations.NullMarked;

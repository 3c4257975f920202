/**
 * The season after something has gone wrong.
 *
 * <p>In come the season, the plan in force, today and {@link sternwright.season.replan.Event}s; out comes a new plan that moves few of
 * the dates owners were given, each {@link sternwright.season.replan.Move} with its old date, new date and reason. A repair that
 * only touches what no longer fits is there at once; a cold search then betters it. What has begun stays as it is. Moves against a
 * published plan are priced (G. G. Brown, R. F. Dell, R. K. Wood, 'Optimization and persistence', Interfaces 27, 1997, 15-37;
 * citation from memory).
 */
@NullMarked
package sternwright.season.replan;

import org.jspecify.annotations.NullMarked;

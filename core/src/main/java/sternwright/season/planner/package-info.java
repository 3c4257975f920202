/**
 * The one call that plans a season.
 *
 * <p>In come a season, a budget and a seed; out comes a {@link sternwright.season.planner.SeasonAnswer}: the plan, its bound and
 * what binds it; or why there is none. Every plan is proved by {@link sternwright.season.check.SeasonCheck} before it leaves.
 */
@NullMarked
package sternwright.season.planner;

import org.jspecify.annotations.NullMarked;

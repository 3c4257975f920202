/**
 * The season planner beside its peers: the whiteboard (boats by date, first free slot) and one constraint model of the whole season
 * with a full hint; re-planning; project scheduling beside CP-SAT on published instances; the judge on random seasons.
 *
 * <p>Every plan that is counted has passed {@code SeasonCheck}.
 */
@NullMarked
package sternwright.bench.season;

import org.jspecify.annotations.NullMarked;

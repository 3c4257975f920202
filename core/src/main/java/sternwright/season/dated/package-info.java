/**
 * From planned visits to the season's operations on working quarter-days, and from a plan back to boats, dates and people.
 *
 * <p>Comes in: a {@link sternwright.season.dated.SeasonRequest}: boats with their planned visits, the yard's resources, owners'
 * dates, promises. Goes out: the lean {@link sternwright.season.SeasonProblem} with the meaning of each of its operations, and
 * for a plan of it a {@link sternwright.season.dated.DatedSeason}: day and hour, hoist, people and the reason of each date.
 *
 * <p>Only working days are on the axis; holidays are left out, so that a work may begin before and end after one. People and
 * hoists are named afterwards by bipartite matching (H. W. Kuhn, 'The Hungarian method', Naval Res. Logist. Q. 2, 1955, 83-97:
 * augmenting paths), which P. Hall's condition in the plan guarantees to succeed.
 */
@NullMarked
package sternwright.season.dated;

import org.jspecify.annotations.NullMarked;

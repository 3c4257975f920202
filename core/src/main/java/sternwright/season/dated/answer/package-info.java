/**
 * A plan of the season in the yard's words: day and hour, people, hoist, why on this date, what moved, and how full everything is.
 *
 * <p>Comes in: a {@link sternwright.season.dated.make.SeasonOfYard} and a proved {@link sternwright.season.SeasonPlan} of it. Goes
 * out: a {@link sternwright.season.dated.answer.DatedSeason}. People and hoists are named by augmenting paths in a bipartite graph
 * (H. W. Kuhn, 'The Hungarian method', Naval Res. Logist. Q. 2, 1955, 83-97), each keeping what he or she had begun.
 */
@NullMarked
package sternwright.season.dated.answer;

import org.jspecify.annotations.NullMarked;

/**
 * Makes the lean season: the operations of every visit with their lags, windows, skills, hoists and places.
 *
 * <p>Comes in: a {@link sternwright.season.dated.SeasonRequest}. Goes out: a {@link sternwright.season.dated.make.SeasonOfYard}
 * with the {@link sternwright.season.SeasonProblem} and the meaning of each operation; or the faults for which no season can be
 * planned. The order of a stay (lift, wash, lay-up, recommission, launch, settling, sea trial) is common practice of the trade.
 */
@NullMarked
package sternwright.season.dated.make;

import org.jspecify.annotations.NullMarked;

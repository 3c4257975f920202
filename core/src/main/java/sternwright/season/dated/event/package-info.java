/**
 * What happens to a season that is under way, and the season that is asked for after it.
 *
 * <p>Comes in: a {@link sternwright.season.dated.SeasonRequest} and events. Goes out: the request after them. Dates that owners know
 * stay promised; only those that the event itself concerns are released.
 */
@NullMarked
package sternwright.season.dated.event;

import org.jspecify.annotations.NullMarked;

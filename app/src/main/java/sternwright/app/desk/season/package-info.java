/**
 * Plans the yard's season, plans on after something has happened, and publishes the plan that the yard works by.
 *
 * <p>Comes in: the yard's folder, a day called today, events, how long to search. Goes out: a
 * {@link sternwright.season.dated.answer.DatedSeason} that two judges have passed. Nothing is shown or written before that.
 */
@NullMarked
package sternwright.app.desk.season;

import org.jspecify.annotations.NullMarked;

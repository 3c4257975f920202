/**
 * The season as calendar files: one for each of the crew, one for each boat.
 *
 * <p>Comes in: a {@link sternwright.season.dated.answer.DatedSeason}. Goes out: text in the iCalendar format (RFC 5545), written by
 * biweekly. Times are local to the yard (floating). An operation keeps its identifier as long as it keeps its name, so that a
 * calendar that takes the file again moves the entry and does not double it.
 */
@NullMarked
package sternwright.app.paper.calendar;

import org.jspecify.annotations.NullMarked;

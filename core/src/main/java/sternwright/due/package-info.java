/**
 * What is due, when and why.
 *
 * <p>Comes in: boat, berth, yard, rules in force, history and a day called today. Goes out: one {@link sternwright.due.Due}
 * for every part and rule, with the date by each clause, the clause that came first, an 80 % range where engine hours are
 * forecast, the last sensible date and the reason in one sentence. Calendar arithmetic is {@code java.time}'s; the hours
 * forecast is a gamma process with a gamma prior on its rate (see {@link sternwright.due.hours.HoursForecast}).
 */
@NullMarked
package sternwright.due;

import org.jspecify.annotations.NullMarked;

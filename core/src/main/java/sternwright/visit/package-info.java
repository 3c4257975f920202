/**
 * From a boat's due list to its visits, and back to what people read.
 *
 * <p>In: boat, berth, yard, rules in force, history, due list and a day called today. Out: visits with date ranges, place, works
 * and their reasons, minutes, supplies and price, what bundling saves, the proof (bound and gap), and answers to "one visit
 * fewer", "one more" and "what if this is left". The lean question and its solver are in the packages below.
 *
 * <p>Months are the grain: a work may be done in a month if it may be done at the month's start, and date ranges are narrowed
 * afterwards by the days that matter (end of a safety item's life, first frost, lay-up and recommission).
 */
@NullMarked
package sternwright.visit;

import org.jspecify.annotations.NullMarked;

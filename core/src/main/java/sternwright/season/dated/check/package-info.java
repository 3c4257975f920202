/**
 * Judges a dated season in the yard's own words, before anybody sees it.
 *
 * <p>Comes in: what was asked and the dated answer. Goes out: a sentence for everything that is wrong; none if it is sound. Shares
 * nothing with the planner or with the way there and back but the records themselves: days are counted on the calendar, boats on
 * the ground, people one by one.
 */
@NullMarked
package sternwright.season.dated.check;

import org.jspecify.annotations.NullMarked;

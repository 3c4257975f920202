/**
 * What the yard lifts, stands and works with: hoists, hard standing, people, tides, and what the season's wishes are worth.
 *
 * <p>Comes in: the yard's own figures from its files. Goes out: records that the season is planned with, with the few sums that
 * need nothing else: which hoist takes which hull, on which days there is water enough, who is there on a day.
 */
@NullMarked
package sternwright.yard.resource;

import org.jspecify.annotations.NullMarked;

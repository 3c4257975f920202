/**
 * What would help: what one more of something would buy, and why a season can't be planned.
 *
 * <p>In comes a season; out come {@link sternwright.season.relief.OneMore}s with their worth, found by planning again with one more
 * hoist, place or technician; or, where no plan exists, a {@link sternwright.season.relief.NoSeason}: the smallest set of visits
 * found that clash, where, whether that is proved, and the reliefs that were tried, cheapest first.
 */
@NullMarked
package sternwright.season.relief;

import org.jspecify.annotations.NullMarked;

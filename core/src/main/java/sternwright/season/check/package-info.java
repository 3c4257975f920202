/**
 * The independent judge of every plan.
 *
 * <p>In come a season and a plan; out come the {@link sternwright.season.check.Violation}s, none if the plan may be shown. It shares
 * no code with the planners: people and hoists are matched by augmenting paths quarter by quarter (instead of counted by sets),
 * places are filled from the longest down, and every cost is added up again.
 */
@NullMarked
package sternwright.season.check;

import org.jspecify.annotations.NullMarked;

/**
 * Today: what the yard's people see first.
 *
 * <p>In comes the yard as it stands today; out goes what presses most, boat by boat.
 */
@NullMarked
package sternwright.app.web.today;

import org.jspecify.annotations.NullMarked;

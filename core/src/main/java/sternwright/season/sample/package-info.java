/**
 * Invented seasons for measurements, tests and demonstrations.
 *
 * <p>In comes a number of boats and a seed; out comes a {@link sternwright.season.SeasonProblem}. No boat, person or yard in it
 * exists. The shares, lengths and prices are chosen to look like a northern yard's year (common practice, no source); they are
 * fixed so that measurements made at different times can be compared.
 */
@NullMarked
package sternwright.season.sample;

import org.jspecify.annotations.NullMarked;

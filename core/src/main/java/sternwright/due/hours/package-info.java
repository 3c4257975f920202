/**
 * When an engine will have run a number of hours more.
 *
 * <p>Comes in: what the yard expects of a kind of use, how use spreads over the year, and what the meters told. Goes out: a
 * median date with its 80 % range. The model is a gamma process with a gamma prior on its rate (van Noortwijk, "A survey of
 * the application of gamma processes in maintenance", Reliability Engineering and System Safety 94 (2009), from memory).
 */
@NullMarked
package sternwright.due.hours;

import org.jspecify.annotations.NullMarked;

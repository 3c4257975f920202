/**
 * Visits as people see them: dates, place, works with reasons, minutes, supplies and price.
 *
 * <p>Comes in: the solver's lean plan mapped back onto the boat. Goes out: what job card, estimate and season read.
 */
@NullMarked
package sternwright.visit.planned;

import org.jspecify.annotations.NullMarked;

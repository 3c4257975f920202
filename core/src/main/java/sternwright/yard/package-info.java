/**
 * The yard: rates, tariff of lifts and hard standing, season, kinds of use, people and resources.
 *
 * <p>Comes in: the yard's own figures. Goes out: prices and windows that due list, visits and season use.
 */
@NullMarked
package sternwright.yard;

import org.jspecify.annotations.NullMarked;

/**
 * How good any plan could be: lower bounds on the cost of a season.
 *
 * <p>In come the arrays of a season and the cost of a plan already found; out comes a {@link sternwright.season.Bound}. Limits of
 * people, hoists and places are given prices by quarter (Lagrangian relaxation, M. L. Fisher, Management Science 27, 1981, 1-18);
 * with prices instead of limits every visit can be planned alone and best, and the sum is a bound. The prices are found by a
 * deflected subgradient method (B. T. Polyak, USSR Comput. Math. Math. Phys. 9, 1969, 14-29).
 */
@NullMarked
package sternwright.season.bound;

import org.jspecify.annotations.NullMarked;

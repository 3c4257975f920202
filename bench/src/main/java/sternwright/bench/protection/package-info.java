/**
 * Protection measured: the solver beside ngspice in the same run, growth with the number of bodies, anode life of many boats, diagnosis.
 *
 * <p>Comes in: nothing but sizes. Goes out: times and ratios on the terminal. ngspice is used where it is installed ({@code apt-get install
 * ngspice}); without it the ratios are left out and said to be.
 */
@NullMarked
package sternwright.bench.protection;

import org.jspecify.annotations.NullMarked;

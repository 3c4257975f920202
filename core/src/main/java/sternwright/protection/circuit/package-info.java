/**
 * The protection circuit as a surveyor would draw it: bodies of metal in water, what joins them, what drives them.
 *
 * <p>In: bodies with areas, polarisation curves and resistances to remote water, links, current sources. Out: a {@code Circuit}, and by
 * {@code CircuitCheck} every reason why a circuit has no answer. Curves are sums of Tafel terms with an optional diffusion limit, the form
 * of the published corrosion models (i = i_act i_lim / (i_act + i_lim)); every curve rises with potential, so a sound circuit has exactly
 * one answer. Potentials are volts against silver/silver chloride in seawater; conventional current leaving metal into water is positive.
 */
@NullMarked
package sternwright.protection.circuit;

import org.jspecify.annotations.NullMarked;

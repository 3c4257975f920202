/**
 * The metals of a boat's underwater gear: what potential each takes by itself, how it polarises, when it is protected, and for anode
 * alloys how much charge a kilogram gives; and the electrodes that potentials are read against.
 *
 * <p>In: the name of a metal, the kind of water, the supply of oxygen. Out: figures, each with its source and standing, and reactions for
 * a circuit. Free potentials follow the published galvanic series in flowing seawater; the shapes of the curves are chosen to land on
 * them and on published current densities, and are good for tens of millivolts and a factor of two in current.
 */
@NullMarked
package sternwright.protection.metal;

import org.jspecify.annotations.NullMarked;

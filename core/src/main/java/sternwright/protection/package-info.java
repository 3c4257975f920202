/**
 * Galvanic corrosion and cathodic protection of a boat's underwater metal.
 *
 * <p>In: the boat with its parts, metals, areas, bonds, and the water of its berth. Out: the potential of every part, the currents,
 * the judgement of each metal, the life of each anode, the effect of each fault, and what the readings say is wrong. The sub-packages
 * stand in the order of the work: {@code water}, {@code metal}, {@code circuit}, {@code solver}, then the boat's own circuit and what
 * is asked of it.
 */
@NullMarked
package sternwright.protection;

import org.jspecify.annotations.NullMarked;

/**
 * Yard units at the edges: °C or °F, litre or gallon, bar or psi, mm or thou, N m or lbf ft, kW or hp.
 *
 * <p>Comes in: a figure with the unit a person typed, or a figure as the program keeps it. Goes out: the same quantity in the
 * unit asked. Inside, the program keeps °C, K, L, bar, mm, N m, kW, kg, V, Ω. Factors: NIST Special Publication 811 (2008
 * edition), appendix B.8 and B.9, exact where the definition is exact.
 */
@NullMarked
package sternwright.measure.unit;

import org.jspecify.annotations.NullMarked;

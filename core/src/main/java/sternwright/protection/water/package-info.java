/**
 * Electric figures of the water: resistivity from salinity and temperature, and resistances of bodies to remote water from their shape.
 *
 * <p>In: practical salinity, temperature, lengths and areas. Out: ohm metres and ohms. Salinity by the Practical Salinity Scale 1978
 * with the 1986 extension to fresh water; resistances by Dwight, by the classification societies' rules and by textbook electrostatics.
 */
@NullMarked
package sternwright.protection.water;

import org.jspecify.annotations.NullMarked;

/**
 * Commands on metal under water: the protection of a boat, and a circuit by itself.
 *
 * <p>Comes in: a boat with readings, or a circuit file. Goes out: potentials, currents, states and what to measure next.
 */
@NullMarked
package sternwright.app.command.protect;

import org.jspecify.annotations.NullMarked;

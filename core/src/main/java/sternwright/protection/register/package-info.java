/**
 * The protection circuit of a boat as its register knows it.
 *
 * <p>In: boat, berth, catalogue of parts, catalogue of metals, and the condition asked for (month, at the berth or running, shore lead
 * plugged or not, age of the paint). Out: a circuit with a body for every wet part, the engine behind its raw-water passage, a metal
 * hull, the marina behind the shore lead, and the joints that the arrangement has by nature; and every figure that had to be assumed,
 * with its source and the key by which the yard overrides it. What the register says always leads.
 */
@NullMarked
package sternwright.protection.register;

import org.jspecify.annotations.NullMarked;

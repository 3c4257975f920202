/**
 * The protection report of a boat: everything that is said of it, in one record.
 *
 * <p>In: boat, berth, kind of use, history, the yard's own figures, readings. Out: parts with potentials at the berth and under way and
 * their judgement, anode life, alloy and mass, faults by harm, the diagnosis where there were readings, the pocket formulas beside the
 * network, plain words for the owner, how to measure, cautions, and what such a model cannot see.
 */
@NullMarked
package sternwright.protection.report;

import org.jspecify.annotations.NullMarked;

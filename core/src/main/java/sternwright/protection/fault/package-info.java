/**
 * What can go wrong with a boat's protection, and what each fault does.
 *
 * <p>In: a boat's circuit. Out: every single fault that its joints, anodes, paint and shore lead can have, with how often such faults are
 * met; the potential of each part and the life of each anode with it; and a ranking by harm. A fault is a change of the circuit; its
 * severities (a joint of 0.3, 1 or 5 ohm) are variants of it. How often faults are met: a surveyor of over 7,000 steel boats could prove
 * stray current in three (IIMS, The Report, June 2021); so galvanic causes come first, wiring second, stray current last. The figures
 * themselves are from memory and can be replaced by the yard's own records.
 */
@NullMarked
package sternwright.protection.fault;

import org.jspecify.annotations.NullMarked;

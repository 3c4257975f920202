/**
 * What is wrong with a boat's protection, given what was measured.
 *
 * <p>In: the boat's circuit, its possible faults with their odds, readings with their uncertainty. Out: a probability for each fault and
 * pair of faults, for "all sound" and for "something else", the next measurement that tells most, and the plain statement when nothing
 * explains the readings. A short list of discrete faults makes the inverse problem well posed. For each hypothesis the circuit is solved;
 * what is not known of a sound boat (demand, paint, resistance of the water, the half cell) is integrated out to first order, so readings
 * have a joint normal distribution; severities are summed over. Bayes' rule does the rest.
 */
@NullMarked
package sternwright.protection.diagnosis;

import org.jspecify.annotations.NullMarked;

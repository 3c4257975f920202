/**
 * Anodes: how long they last, how much is needed, which alloy suits the water.
 *
 * <p>In: the circuit of a boat at its berth and under way, its year (running hours, months afloat), the paint's age, weighed wastage. Out:
 * mass left month by month, the day an anode is half gone and the day it is spent, with an 80 % range; the mass and number of anodes
 * by the published design method; an alloy with the reason. Charge to mass by the alloys' practical capacities; utilisation and coating
 * breakdown by DNV-RP-B401.
 */
@NullMarked
package sternwright.protection.anode;

import org.jspecify.annotations.NullMarked;

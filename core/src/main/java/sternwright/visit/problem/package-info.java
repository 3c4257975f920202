/**
 * The lean form of one boat's visit question and its answer: plain months, money in the currency's smallest unit, works
 * by index.
 *
 * <p>In: months with what the boat can do in them, a tariff, works with their life, places, seasons and risk, rules between
 * works and the engineer's demands. Out: a plan with its cost split by cause, its bound and its gap, or a refusal that names
 * the demands which clash.
 *
 * <p>The cost of a work depends on the interval between two doings, with shared set-up costs above it: Gustavsson,
 * Patriksson, Strömberg, Wojciechowski and Önnheim, "Preventive maintenance scheduling of multi-component systems with
 * interval costs", Computers and Industrial Engineering 76 (2014).
 */
@NullMarked
package sternwright.visit.problem;

import org.jspecify.annotations.NullMarked;

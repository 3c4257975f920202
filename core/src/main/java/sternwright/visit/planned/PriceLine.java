package sternwright.visit.planned;

import sternwright.measure.Money;

/**
 * A line of the price that belongs to the visit as a whole: lift, hard standing, call-out, set-up.
 *
 * @param what as printed
 * @param quantity how many units
 * @param unit the unit
 * @param amount price of the line without tax
 */
public record PriceLine(String what, double quantity, String unit, Money amount) {}

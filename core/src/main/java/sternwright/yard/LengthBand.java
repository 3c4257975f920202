package sternwright.yard;

/**
 * One band of a tariff by boat length.
 *
 * @param upToLengthM longest boat of this band, m
 * @param price price of one lift, in the yard's currency; lift out, wash, and launch together
 */
public record LengthBand(double upToLengthM, double price) {}

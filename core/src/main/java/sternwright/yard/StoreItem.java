package sternwright.yard;

/**
 * A thing in the stores and what it sells for.
 *
 * @param id short name, as used by rules
 * @param name as written on estimate and pick list
 * @param unit what one is counted in: {@code L}, {@code pcs}, {@code kg}, {@code m}
 * @param price price of one unit without tax, in the yard's currency
 */
public record StoreItem(String id, String name, String unit, double price) {}

package sternwright.season;

/**
 * One visit of one boat.
 *
 * @param boat the boat's name
 * @param name what the visit is, such as "winter ashore"
 */
public record Visit(String boat, String name) {}

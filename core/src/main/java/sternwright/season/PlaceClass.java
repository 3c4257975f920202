package sternwright.season;

/**
 * Hard-standing places of one length. Classes stand in ascending order: a short boat may use a longer place, never the reverse.
 *
 * @param name the yard's name, such as "up to 9 m"
 * @param places how many there are, at least 0
 */
public record PlaceClass(String name, int places) {}

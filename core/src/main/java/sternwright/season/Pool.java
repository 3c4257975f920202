package sternwright.season;

/**
 * Something of which the yard has a fixed number, used by operations while they run: wash pads, alignment sets.
 *
 * @param name the yard's name for it
 * @param capacity how many there are, at least 0
 */
public record Pool(String name, int capacity) {}

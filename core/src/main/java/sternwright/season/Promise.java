package sternwright.season;

/**
 * A date the yard has given an owner.
 *
 * @param operation index of the operation that was promised
 * @param startQ quarter it was promised to start
 */
public record Promise(int operation, int startQ) {}

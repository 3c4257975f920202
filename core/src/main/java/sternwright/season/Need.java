package sternwright.season;

/**
 * A share of a pool that an operation occupies while it runs.
 *
 * @param pool index of the {@link Pool}
 * @param amount how much of it, at least 1
 */
public record Need(int pool, int amount) {}

package sternwright.season.relief;

/**
 * One more of something, and what it would save.
 *
 * @param what for people: "one more technician for engine"
 * @param saves points that the plan with it costs less; a longer search may find more
 */
public record OneMore(String what, long saves) {}

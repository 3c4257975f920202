package sternwright.yard.resource;

import java.time.LocalDateTime;

/**
 * One high water from the yard's tide table.
 *
 * @param at local time
 * @param heightM height above chart datum, m
 */
public record HighWater(LocalDateTime at, double heightM) {}

package sternwright.yard.resource;

/**
 * Places on hard standing of one length. A short boat may stand on a longer place.
 *
 * @param id short name
 * @param name as people say it
 * @param upToLengthM longest boat that fits, m
 * @param places how many there are
 */
public record StandingClass(String id, String name, double upToLengthM, int places) {}

package sternwright.season;

/**
 * A part of a visit whose operations belong closely together in time: the lay-up half, the recommission half, or a whole short visit.
 *
 * @param visit index of the {@link Visit}
 * @param name for people: "lay-up"
 */
public record Half(int visit, String name) {}

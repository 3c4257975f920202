package sternwright.job;

import sternwright.boat.PartRef;

/**
 * An opening below water whose state is noted on arrival and on leaving.
 *
 * @param part the seacock or fitting
 * @param name as people say it, with the side where there are two installations
 * @param shuts true for a seacock, of which open or shut is noted; false for a seal or bellows, of which dry or weeping is noted
 */
public record HullOpening(PartRef part, String name, boolean shuts) {}

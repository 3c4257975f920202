package sternwright.season.dated;

import sternwright.yard.resource.Absence;

/**
 * Somebody who is away or a hoist that is down, written down beside the resources' file.
 *
 * @param who id of one of the crew or of a hoist
 * @param days the days
 */
public record Away(String who, Absence days) {}

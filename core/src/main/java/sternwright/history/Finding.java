package sternwright.history;

import sternwright.finding.Severity;

/**
 * What a reading meant on the day it was taken. It is kept beside the reading because limits change later.
 *
 * @param reading name of the reading
 * @param severity fine, watch, act or unsafe
 * @param why in one sentence, with the limit and where the limit comes from
 */
public record Finding(String reading, Severity severity, String why) {}

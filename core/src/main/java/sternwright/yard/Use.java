package sternwright.yard;

import sternwright.measure.MonthlyShare;

/**
 * A kind of use and the running hours to expect of it before a boat's own meter has told enough.
 *
 * @param id short name
 * @param name as people say it
 * @param annualHours expected engine hours a year
 * @param variation coefficient of variation of that figure between boats, above 0 to 2
 * @param months how a year's hours spread over the months, of a berth in the northern hemisphere
 * @param heavy counts as heavy use in rules that halve or shorten lives
 */
public record Use(String id, String name, double annualHours, double variation, MonthlyShare months, boolean heavy) {}

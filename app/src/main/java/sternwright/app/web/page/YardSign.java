package sternwright.app.web.page;

import sternwright.measure.unit.YardUnits;

/**
 * What stands over every page.
 *
 * @param name the yard's name
 * @param invented whether it is a yard to try the program on
 * @param units the units it works in
 */
public record YardSign(String name, boolean invented, YardUnits units) {}

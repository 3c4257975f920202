/**
 * An invented yard with eight years of plausible past, for trying the program out, for tests and for measurements.
 *
 * <p>Comes in: a day called today and a seed. Goes out: yard, berths, boats, histories; the same seed and day give the same
 * yard. Works are chosen by the program's own due list, season by season, and then left out, refused or written down wrongly
 * as people do. Rates of neglect, wear and mishap are invented and say nothing about real boats.
 */
@NullMarked
package sternwright.app.demo;

import org.jspecify.annotations.NullMarked;

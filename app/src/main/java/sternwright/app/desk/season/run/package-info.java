/**
 * Runs of the season that outlast a page and a program.
 *
 * <p>In comes what is asked of a season; it is noted in the store, done once by any of the programs on it, slice by slice, the
 * best plan kept after each; a program that dies is followed by another, which goes on from the plan kept. Out goes how far each
 * run is and its best plan, the same at every program. See docs/decisions/0062.
 */
@NullMarked
package sternwright.app.desk.season.run;

import org.jspecify.annotations.NullMarked;

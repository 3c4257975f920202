/**
 * What is wrong with a file, so that the person who wrote it can mend it.
 *
 * <p>Comes in: what a reader found and what it expected, with file, line and field. Goes out: every problem of every file
 * together, in the order of the files, each with the nearest known name and what to do. Edit distance: see {@link sternwright.finding.NearestName}.
 */
@NullMarked
package sternwright.app.files.problem;

import org.jspecify.annotations.NullMarked;

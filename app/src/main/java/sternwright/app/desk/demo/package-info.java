/**
 * The invented yard and the main job on it.
 *
 * <p>Comes in: a folder, a seed and a number of boats. Goes out: a yard that says it is invented, and what was found on it.
 */
@NullMarked
package sternwright.app.desk.demo;

import org.jspecify.annotations.NullMarked;

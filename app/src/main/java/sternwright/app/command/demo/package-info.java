/**
 * The command that invents a yard and walks through the main job on it.
 *
 * <p>Comes in: a folder and a seed. Goes out: a yard that says it is invented, and a short story of what can be done with it.
 */
@NullMarked
package sternwright.app.command.demo;

import org.jspecify.annotations.NullMarked;

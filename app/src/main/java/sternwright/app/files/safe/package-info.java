/**
 * Writing that a crash cannot tear, and that two programs at once cannot mix.
 *
 * <p>Comes in: texts for files of a yard's folder. Goes out: all of them, or none. One file: written beside its place, forced
 * to disk, renamed over it. Several files: all staged in one folder with a list, the list renamed to say "ready", then moved
 * one by one; whoever opens the yard next finishes what a crash left. Rests on rename being atomic within one file system
 * (POSIX.1-2017, rename).
 */
@NullMarked
package sternwright.app.files.safe;

import org.jspecify.annotations.NullMarked;

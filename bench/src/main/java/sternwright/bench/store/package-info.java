/**
 * The store measured: reading a whole yard and what one change costs beside the folder, and writing through many kills.
 *
 * <p>Comes in: the size of an invented yard, or how often to kill. Goes out: seconds, ratios and memory in lines.
 */
@NullMarked
package sternwright.bench.store;

import org.jspecify.annotations.NullMarked;

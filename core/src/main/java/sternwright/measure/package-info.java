/**
 * Quantities that hurt when mixed up: money and its rounding, months of the year, yard units at the edges.
 *
 * <p>SI inside; the yard's own units are only for reading and writing. Nothing comes in but numbers.
 */
@NullMarked
package sternwright.measure;

import org.jspecify.annotations.NullMarked;

/** Measurements beside peers in the same run; never shipped. */
@NullMarked
package sternwright.bench;

import org.jspecify.annotations.NullMarked;

/** Visits of generated boats beside what would be done without planning. */
@NullMarked
package sternwright.bench.visit;

import org.jspecify.annotations.NullMarked;

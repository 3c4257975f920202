/** Generated boats, the worked example and exhaustive searches against which the visits are tested. */
@NullMarked
package sternwright.visit;

import org.jspecify.annotations.NullMarked;

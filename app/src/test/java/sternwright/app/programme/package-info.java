/** Tests of the shipped service programme against the house table, and of what leads over it. */
@NullMarked
package sternwright.app.programme;

import org.jspecify.annotations.NullMarked;

/** Tests of what is packed. */
@NullMarked
package sternwright.app.files.packed;

import org.jspecify.annotations.NullMarked;

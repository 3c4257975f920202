/** Yards moved, backed up and restored. */
@NullMarked
package sternwright.app.desk.keeping;

import org.jspecify.annotations.NullMarked;

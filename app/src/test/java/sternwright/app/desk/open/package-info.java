/** The yard that stays open. */
@NullMarked
package sternwright.app.desk.open;

import org.jspecify.annotations.NullMarked;

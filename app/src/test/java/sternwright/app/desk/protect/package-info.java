/** Reports of boats' protection that are kept. */
@NullMarked
package sternwright.app.desk.protect;

import org.jspecify.annotations.NullMarked;

/** The due list in the orders that can be asked for. */
@NullMarked
package sternwright.app.web.due;

import org.jspecify.annotations.NullMarked;

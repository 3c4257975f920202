/** Pages and schemas that are made from the program and must say what it does. */
@NullMarked
package sternwright.app.truth;

import org.jspecify.annotations.NullMarked;

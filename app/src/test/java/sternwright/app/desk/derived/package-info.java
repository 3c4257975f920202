/** What is derived from a yard holds as long as the yard does. */
@NullMarked
package sternwright.app.desk.derived;

import org.jspecify.annotations.NullMarked;

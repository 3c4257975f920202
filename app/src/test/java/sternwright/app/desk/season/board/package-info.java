/** The published season as it hangs on the wall. */
@NullMarked
package sternwright.app.desk.season.board;

import org.jspecify.annotations.NullMarked;

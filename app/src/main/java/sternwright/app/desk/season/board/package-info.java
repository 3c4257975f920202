/**
 * The published season as it hangs on the wall: who published it and when, drawn from what was judged once and kept until the
 * plan or what it rests on changes.
 *
 * <p>In comes an open yard; out go the season behind the board, what becomes of it when a visit is set on another day, and what one
 * more slot, place or technician would save. What takes long is worked out behind the asker.
 */
@NullMarked
package sternwright.app.desk.season.board;

import org.jspecify.annotations.NullMarked;

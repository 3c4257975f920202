/**
 * The yard's day: who works where, what goes up and down, who stands ashore, which parts are missing, which promises are at risk.
 *
 * <p>Comes in: the yard's files, its published season with promises and dates, the due list, a day. Goes out: rows of one day. What
 * the published plan does not say is not guessed: a boat whose launch nobody planned stands where she was last put.
 */
@NullMarked
package sternwright.app.desk.today;

import org.jspecify.annotations.NullMarked;

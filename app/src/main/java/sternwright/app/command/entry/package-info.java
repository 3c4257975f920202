/**
 * What holds for every command: the first word, the folder, the day, the exit status and the words of the trade.
 *
 * <p>Comes in: what was typed before and around a command. Goes out: the yard's folder, today, where answers and remarks go.
 * Stands before every command; knows none of them.
 */
@NullMarked
package sternwright.app.command.entry;

import org.jspecify.annotations.NullMarked;

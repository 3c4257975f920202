/**
 * An estimate as its owner answers it: each line accepted or refused, with name and day.
 *
 * <p>Comes in: an estimate, answers. Goes out: the estimate as data that can be kept as a text, with its answers in it, and for each
 * safety item refused an entry of the history. What was offered does not change when the plan does: the text is what the owner saw.
 */
@NullMarked
package sternwright.app.desk.answers;

import org.jspecify.annotations.NullMarked;

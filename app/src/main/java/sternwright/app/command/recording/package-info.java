/**
 * Commands that write down what was done and what the meters show.
 *
 * <p>Comes in: work, date, hours, readings as typed. Goes out: what was written, what each reading means, how the due list moved.
 */
@NullMarked
package sternwright.app.command.recording;

import org.jspecify.annotations.NullMarked;

/**
 * Judging what was measured against the limits it was asked with.
 *
 * <p>Comes in: a reading as asked by a rule, as taken, and the one before it. Goes out: a
 * {@link sternwright.job.reading.Judgement}: fine, watch, act or unsafe, with limit, reason and source. The limits are the
 * rule's; the guard band inside a limit is common practice, no source.
 */
@NullMarked
package sternwright.job.reading;

import org.jspecify.annotations.NullMarked;

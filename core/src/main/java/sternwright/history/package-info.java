/**
 * What was done and what the meters said: service entries, readings, refusals, engine hours over time.
 *
 * <p>Comes in: entries as written down, with gaps and slips. Goes out: running hours that only rise, and every slip that was
 * passed over, said in words. Unknown history stays unknown. A wrong line is struck by a later one and stays to be seen.
 */
@NullMarked
package sternwright.history;

import org.jspecify.annotations.NullMarked;

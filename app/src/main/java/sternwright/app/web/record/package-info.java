/**
 * Recording work: one work or several of a visit, with readings judged as they are typed, written down together or not at all.
 *
 * <p>In comes which works of a boat, how each ended and what was measured; out go lines of her history. Whose judgement:
 * {@code sternwright.job.reading}; whose deed: {@code sternwright.app.desk.recording}.
 */
@NullMarked
package sternwright.app.web.record;

import org.jspecify.annotations.NullMarked;

/**
 * Working through a job card: what is typed is judged, and in the end recorded.
 *
 * <p>In comes a card as issued and what was written on it, field by field; out goes a verdict on each reading as it is typed, and
 * the lines for the boat's history once every work is answered. Limits and verdicts: {@code sternwright.job.reading}.
 */
@NullMarked
package sternwright.app.desk.working;

import org.jspecify.annotations.NullMarked;

/**
 * The words every answer is given in: how severe, from which source, with which caution.
 *
 * <p>Every figure that a person sees carries a {@link sternwright.finding.Source}; every judgement a
 * {@link sternwright.finding.Severity}. Nothing here computes.
 */
@NullMarked
package sternwright.finding;

import org.jspecify.annotations.NullMarked;

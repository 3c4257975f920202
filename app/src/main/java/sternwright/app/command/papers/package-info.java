/**
 * Commands that put a visit on paper: the job card and the estimate.
 *
 * <p>Comes in: a boat and a visit. Goes out: a page and a PDF, and where they lie.
 */
@NullMarked
package sternwright.app.command.papers;

import org.jspecify.annotations.NullMarked;

/**
 * Estimates: made from a planned visit, sent to the owner by a private link, answered line by line.
 *
 * <p>In comes a visit of a boat's plan; out goes an estimate that stays as it was made, a link whose secret is shown once, and the
 * owner's answer. A refused safety item goes on record. The owner's pages are open to whoever holds the link, and show nothing but
 * that one estimate.
 */
@NullMarked
package sternwright.app.web.estimate;

import org.jspecify.annotations.NullMarked;

/**
 * The estimate: one visit in the owner's words, priced line by line, with the owner's yes or no.
 *
 * <p>Comes in: a planned visit with the facts around it. Goes out: an {@link sternwright.job.estimate.Estimate} with why, what
 * happens if declined and price per work, the lines of the visit as a whole, tax by the yard's setting, what bundling saved,
 * and the statement to sign for each safety item that is declined. A price that is not known stays unknown and is said.
 */
@NullMarked
package sternwright.job.estimate;

import org.jspecify.annotations.NullMarked;

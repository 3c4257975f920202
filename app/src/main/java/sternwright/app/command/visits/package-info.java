/**
 * The command that shows the cheapest sound set of visits of a boat, with its proof.
 *
 * <p>Comes in: a boat, a horizon, changes to try. Goes out: visits, price, what bundling saves, bound and gap.
 */
@NullMarked
package sternwright.app.command.visits;

import org.jspecify.annotations.NullMarked;

/**
 * Deeds on metal under water.
 *
 * <p>Comes in: a boat of the yard, or a circuit file, with readings. Goes out: what the protection core says, ready to show.
 * Whose formulas: those of {@code sternwright.protection}.
 */
@NullMarked
package sternwright.app.desk.protect;

import org.jspecify.annotations.NullMarked;

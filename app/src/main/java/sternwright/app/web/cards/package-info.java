/**
 * Job cards: issued from a planned visit, printed, and worked through on a phone.
 *
 * <p>In comes what a technician ticks and types, one field at a time or all at once; out goes a verdict on each reading with its
 * limit and why, and in the end lines in the boat's history. The deeds behind it: {@code sternwright.app.desk.working}.
 */
@NullMarked
package sternwright.app.web.cards;

import org.jspecify.annotations.NullMarked;

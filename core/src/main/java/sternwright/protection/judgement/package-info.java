/**
 * What a potential says of a metal: unprotected, protected or overprotected, by which limit, from which source.
 *
 * <p>In: a metal, a potential with its reference electrode, the kind of water. Out: a judgement in words with limit, severity and source.
 * Criteria are the published ones of {@code metal}; in fresh water, where no absolute figures are agreed, the shift from the metal's own
 * free potential.
 */
@NullMarked
package sternwright.protection.judgement;

import org.jspecify.annotations.NullMarked;

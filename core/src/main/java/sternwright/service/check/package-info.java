/**
 * Whether service programmes hang together before anybody relies on them.
 *
 * <p>Comes in: programmes, the part catalogue and the boats. Goes out: every reference that leads nowhere, with the nearest
 * known name, every figure that cannot be, and every ring of rules that would set each other off for ever.
 */
@NullMarked
package sternwright.service.check;

import org.jspecify.annotations.NullMarked;

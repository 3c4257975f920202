/**
 * Papers as they were issued: job cards with what has been written on them so far, estimates with the link to their owner and
 * the answer.
 *
 * <p>In come a card or an estimate made from a planned visit; it is kept word for word, so that it reads the same however rules
 * and prices change later. Out goes the same, with what people wrote on it. A card is finished once, an estimate answered once.
 */
@NullMarked
package sternwright.app.issued;

import org.jspecify.annotations.NullMarked;

/**
 * Protection circuits written down as JSON, schema {@code protection-case-1}.
 *
 * <p>Comes in: a file. Goes out: a {@code Circuit}, or every problem of the file with the place in it. The schema is the one of the stored
 * reference circuits; expected answers in a file are passed over.
 */
@NullMarked
package sternwright.app.files.circuit;

import org.jspecify.annotations.NullMarked;

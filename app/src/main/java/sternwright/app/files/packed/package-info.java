/**
 * Records in few bytes: for what stays in memory and is seldom looked at, and for what a store keeps between two starts.
 *
 * <p>In come records made of texts, days, numbers, marks and lists of such; out go bytes that this very program reads again. The
 * bytes are no file format: another build of the program need not understand them, which is why {@link
 * sternwright.app.files.packed.ProgramMark} stands in the key of whatever is kept.
 */
@NullMarked
package sternwright.app.files.packed;

import org.jspecify.annotations.NullMarked;

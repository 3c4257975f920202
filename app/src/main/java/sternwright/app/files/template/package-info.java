/**
 * New yards and new boats, complete and commented, to go on with by hand.
 *
 * <p>Comes in: the arrangement and what is known. Goes out: records with every part such an installation usually has, usual
 * metals, and guessed wetted areas that are marked as assumed; what cannot be guessed is left out. The guesses stand in
 * {@code arrangements.yaml} inside the program: common practice, no source.
 */
@NullMarked
package sternwright.app.files.template;

import org.jspecify.annotations.NullMarked;

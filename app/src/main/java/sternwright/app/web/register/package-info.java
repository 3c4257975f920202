/**
 * Registering a boat: an arrangement is picked, and what its template cannot know is answered, as far as it is known.
 *
 * <p>In comes what was typed; out goes the boat's file, whole, or the form again with everything that must be put right. What a
 * boat of that arrangement usually has: {@code sternwright.app.files.template}.
 */
@NullMarked
package sternwright.app.web.register;

import org.jspecify.annotations.NullMarked;

/**
 * Deeds on the register: open a yard, register a boat, look whether all files make sense.
 *
 * <p>Comes in: what a person answered. Goes out: files of the yard, whole or not at all.
 */
@NullMarked
package sternwright.app.desk.register;

import org.jspecify.annotations.NullMarked;

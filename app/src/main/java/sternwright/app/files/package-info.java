/**
 * The yard's folder: read whole with every problem told together, written so that a crash tears nothing.
 *
 * <p>Comes in: a folder as docs/decisions/0002 describes it. Goes out: the records of {@code core}; or
 * {@link sternwright.app.files.problem.BadInput} with file, line and field of everything that is wrong. Sub-packages:
 * {@code shape} (how any file is described), {@code kind} (the file kinds), {@code sheet} (CSV), {@code template} (new yards
 * and boats), {@code safe} (writing), {@code problem} (telling).
 */
@NullMarked
package sternwright.app.files;

import org.jspecify.annotations.NullMarked;

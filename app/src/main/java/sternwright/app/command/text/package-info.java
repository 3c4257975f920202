/**
 * Answers in the three forms they go out in.
 *
 * <p>Comes in: records. Goes out: columns for people, JSON for programs with names in lower case and dates as ISO 8601, and
 * CSV (RFC 4180) with the same names. Formulas: none.
 */
@NullMarked
package sternwright.app.command.text;

import org.jspecify.annotations.NullMarked;

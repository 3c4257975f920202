/**
 * The yard's due list narrowed, counted, and turned into campaigns: every diaphragm seal over seven years.
 *
 * <p>Comes in: the yard's files and its due list of one day. Goes out: rows with their boat, counts beside every choice,
 * campaign lists as CSV (RFC 4180) and one letter an owner. What is not known stays in the list and is said: a part of unknown
 * age is the first to look at.
 */
@NullMarked
package sternwright.app.desk.campaign;

import org.jspecify.annotations.NullMarked;

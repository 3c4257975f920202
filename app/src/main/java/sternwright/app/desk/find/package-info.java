/**
 * Finds boats of a yard by what people remember of them.
 *
 * <p>Comes in: the yard's files and its due list. Goes out: rows with what is due next, in order. Case, accents and letters that
 * are written in two ways (ö, oe) make no difference: letters are taken apart by Unicode's compatibility decomposition (Unicode
 * Standard Annex 15, form NFKD) and their marks left out.
 */
@NullMarked
package sternwright.app.desk.find;

import org.jspecify.annotations.NullMarked;

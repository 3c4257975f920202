/**
 * Tables as spreadsheets keep them: history and hours of a boat, and the register, as CSV (RFC 4180, read by FastCSV).
 *
 * <p>Comes in: text with a header line. Goes out: records, or every problem of every row with its line and column; a table
 * is taken whole or not at all. Separator comma, semicolon or tab, found from the header; UTF-8, with or without the mark
 * that some spreadsheets put in front. Written tables always have commas.
 */
@NullMarked
package sternwright.app.files.sheet;

import org.jspecify.annotations.NullMarked;

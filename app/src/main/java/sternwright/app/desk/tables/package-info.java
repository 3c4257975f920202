/**
 * Tables in and out: the register, hours and history as spreadsheets keep them.
 *
 * <p>Comes in: a CSV file. Goes out: rows written, whole or not at all, or the problems of every row.
 */
@NullMarked
package sternwright.app.desk.tables;

import org.jspecify.annotations.NullMarked;

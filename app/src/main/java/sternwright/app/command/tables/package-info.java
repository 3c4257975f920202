/**
 * Commands that bring tables in from spreadsheets and take them out.
 *
 * <p>Comes in: the name of a table and of a file. Goes out: how many rows were written, or every problem of every row.
 */
@NullMarked
package sternwright.app.command.tables;

import org.jspecify.annotations.NullMarked;

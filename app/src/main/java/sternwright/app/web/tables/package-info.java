/**
 * Tables from a spreadsheet: looked at first, row by row, and taken in whole or not at all.
 *
 * <p>In comes a CSV file; out goes what it would add, or every row that is wrong with what was expected there. Whose deed:
 * {@code sternwright.app.desk.tables}.
 */
@NullMarked
package sternwright.app.web.tables;

import org.jspecify.annotations.NullMarked;

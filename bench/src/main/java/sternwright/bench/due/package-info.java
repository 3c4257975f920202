/** The due list of many boats beside the spreadsheet's equal: last date plus interval, no forecast, no reasons. */
@NullMarked
package sternwright.bench.due;

import org.jspecify.annotations.NullMarked;

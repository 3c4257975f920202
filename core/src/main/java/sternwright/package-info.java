/** The trade's pure computation: records in, records out; no clock, file, database, network or log. */
@NullMarked
package sternwright;

import org.jspecify.annotations.NullMarked;

/** Runs of the season on a store shared by programs. */
@NullMarked
package sternwright.app.desk.season.run;

import org.jspecify.annotations.NullMarked;
